//! A handle on the model, for components that ask it something.

use std::error::Error;
use std::fmt;

use protocol::reply::Reply;
use protocol::request::Request;
use yew::prelude::*;

use crate::platform::worker::{self, Bridge, BridgeError};

/// Why the model gave no reply.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum AskError {
    /// The way to the worker, or the worker, failed.
    Bridge(BridgeError),
    /// The worker said something that this page does not understand.
    Unreadable(String),
}

impl fmt::Display for AskError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Bridge(error) => error.fmt(f),
            Self::Unreadable(reason) => write!(f, "the answer could not be read: {reason}"),
        }
    }
}

impl Error for AskError {}

/// The model behind the worker. Copies lead to the same worker and cost nothing.
#[derive(Clone, Debug)]
pub struct Model(Bridge);

impl PartialEq for Model {
    fn eq(&self, _: &Self) -> bool {
        // There is one worker for the whole page, so a handle never is a reason to draw anew.
        true
    }
}

impl Model {
    /// Asks, and waits for the reply. Dropping the future before the worker has begun takes the question back.
    ///
    /// # Errors
    /// When there is no reply. That a request is refused is a reply.
    pub async fn ask(&self, request: &Request) -> Result<Reply, AskError> {
        let request =
            serde_json::to_string(request).map_err(|e| AskError::Unreadable(e.to_string()))?;
        let reply = self.0.ask(&request).await.map_err(AskError::Bridge)?;
        serde_json::from_str(&reply).map_err(|e| AskError::Unreadable(e.to_string()))
    }

    /// Gives up everything that is not answered yet.
    pub fn cancel(&self) {
        self.0.cancel();
    }
}

/// The model that the whole page shares.
#[hook]
pub fn use_model() -> Model {
    Model(worker::of_page())
}
