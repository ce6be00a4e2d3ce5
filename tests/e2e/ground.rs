//! What every part of the page stands on: it loads, it computes in its worker, and it needs no network a second time.

use serde_json::json;

use crate::support::drive;

#[test]
fn the_page_loads_and_is_accessible() {
    drive(async |page| {
        assert_eq!(page.client.title().await.unwrap(), "Ropewalk");
        page.assert_accessible().await;
    });
}

#[test]
fn the_worker_answers_other_programs() {
    drive(async |page| {
        let refusal = page.ask(json!({ "ask": "nothing that exists" })).await.unwrap();
        assert_eq!(refusal["reply"], "refused", "{refusal:#}");
        assert!(refusal["faults"][0]["field"].is_string(), "{refusal:#}");
    });
}

#[test]
fn the_worker_and_the_command_line_give_the_same_answer() {
    drive(async |page| {
        for request in
            [json!({ "ask": "tables" }), json!({ "ask": "report" }), json!([]), json!(null)]
        {
            let here: serde_json::Value =
                serde_json::from_str(&protocol::answer(&request.to_string())).unwrap();
            assert_eq!(page.ask(request).await, Ok(here));
        }
    });
}

#[test]
fn what_is_no_json_is_refused_before_it_is_sent() {
    drive(async |page| {
        let circle = "const request = {}; request.self = request; return await window.wasmBindings.ask(request)";
        let fault = page.script_async(circle, Vec::new()).await.unwrap_err();
        assert!(fault.starts_with("not-json:"), "{fault}");
        // The page has survived it.
        assert!(page.ask(json!({})).await.is_ok());
    });
}

#[test]
fn the_page_starts_again_without_a_network() {
    drive(async |page| {
        page.kept().await;
        page.end_server();
        page.reload().await;
        assert_eq!(page.ask(json!({})).await.unwrap()["reply"], "refused");
        // Any way into the page leads to it.
        page.open("?from=elsewhere").await;
        page.open("index.html").await;
    });
}

#[test]
fn pictures_and_prints_can_be_made() {
    drive(async |page| {
        for scheme in ["light", "dark"] {
            let picture = page.picture(&format!("ground-{scheme}"), 390, 844, scheme).await;
            assert!(picture.metadata().unwrap().len() > 1000, "{}", picture.display());
        }
        assert_eq!(page.print("ground").await, 1);
    });
}

#[test]
fn no_failure_is_planted() {
    assert_ne!(
        std::env::var("ROPEWALK_PLANT").as_deref(),
        Ok("end-to-end"),
        "planted, to see that it is counted"
    );
}
