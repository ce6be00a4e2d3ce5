//! An answer of the model that follows what is asked: the last one stays until the next one comes.

use std::cell::Cell;
use std::rc::Rc;

use protocol::reply::{Refused, Reply};
use protocol::request::Request;
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use super::Model;
use crate::platform::worker;
use crate::words::fault;

/// What was answered.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Asked {
    /// The last answer.
    pub reply: Option<Rc<Reply>>,
    /// Why there is none to what is asked now.
    pub broke: Option<String>,
}

/// Asks, and asks anew when the request is another one; asks nothing where there is none.
#[hook]
pub fn use_asked(request: Option<Request>) -> Asked {
    let asked = use_state(Asked::default);
    let latest = use_memo((), |()| Cell::new(0_u32));
    {
        let asked = asked.clone();
        // What came last, whichever turn of the component it came in.
        let last = use_mut_ref(|| None::<Rc<Reply>>);
        use_effect_with(request, move |request| {
            latest.set(latest.get().wrapping_add(1));
            let turn = latest.get();
            if let Some(request) = request.clone() {
                spawn_local(async move {
                    let reply = Model::of(worker::of_page()).ask(&request).await;
                    // A later question has been asked in the meantime.
                    if latest.get() != turn {
                        return;
                    }
                    let broke = match reply {
                        Ok(Reply::Refused(Refused { faults })) => {
                            Some(faults.first().map(fault::told).unwrap_or_default())
                        }
                        Ok(reply) => {
                            *last.borrow_mut() = Some(Rc::new(reply));
                            None
                        }
                        Err(error) => Some(error.to_string()),
                    };
                    asked.set(Asked { reply: last.borrow().clone(), broke });
                });
            }
        });
    }
    (*asked).clone()
}
