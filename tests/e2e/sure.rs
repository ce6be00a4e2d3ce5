//! How sure a set is: it comes after the set, moves nothing of it, and goes as deep as a person likes.

use serde_json::json;

use crate::support::drive;

const KNOWN: &str = "return !!document.querySelector('.sure-line button')";

/// How long it may take from the set to how sure it is, in milliseconds. The limit is 1500 on an idle machine; tests
/// run beside others.
const MOST_MS: f64 = 6_000.0;

#[test]
fn how_sure_it_is_follows_the_set_and_moves_nothing() {
    drive(async |page| {
        page.appear(1280, 900, "light").await;
        page.open("#/check").await;
        page.script(
            "window.shifts = []; window.seen = {};
            new PerformanceObserver((list) => list.getEntries().forEach((e) => shifts.push([e.startTime, e.value])))
                .observe({ type: 'layout-shift', buffered: true });
            const look = () => {
                if (!seen.set && document.querySelector('main .answer #strings')) seen.set = performance.now();
                if (!seen.sure && document.querySelector('.sure-line button')) seen.sure = performance.now();
                if (!seen.sure) setTimeout(look, 5);
            };
            look();
            location.hash = '#/set';",
        )
        .await;
        page.until("how sure it is is known", KNOWN).await;
        let took = page.script("return seen.sure - seen.set").await.as_f64().unwrap();
        println!("how sure it is came {took:.0} ms after the set");
        assert!(took < MOST_MS, "{took} ms");
        // Half a second later everything has been drawn.
        page.script_async("await new Promise((done) => setTimeout(done, 500))", Vec::new())
            .await
            .unwrap();
        let shifted = page
            .script("return shifts.filter((s) => s[0] >= seen.sure - 1).reduce((sum, s) => sum + s[1], 0)")
            .await;
        assert!(shifted.as_f64().unwrap() < 0.01, "the page jumped by {shifted}");
        page.assert_accessible().await;
    });
}

#[test]
fn the_depth_is_chosen_once_and_kept() {
    drive(async |page| {
        page.open("#/set").await;
        page.until("how sure it is is known", KNOWN).await;
        let choose =
            |key: &str| format!("document.querySelector('[name=depth][value={key}]').click()");
        let digits = "return /\\d/.test(document.querySelector('.sureness > ul').textContent)";
        // In plain words at first.
        page.open_everything().await;
        assert_eq!(
            page.script("return !/\\d/.test(document.querySelector('.case').textContent)").await,
            json!(true)
        );
        assert_eq!(page.script(digits).await, json!(false));
        page.script(&choose("numbers")).await;
        page.until("numbers are there", digits).await;
        page.script(&choose("bench")).await;
        page.until("formulas are there", "return !!document.querySelector('.case .formula')").await;
        page.assert_accessible().await;
        for (width, scheme) in [(320, "light"), (1280, "dark")] {
            page.picture(&format!("sure-{width}-{scheme}"), width, 900, scheme).await;
            let over = "return document.documentElement.scrollWidth - innerWidth";
            assert_eq!(page.script(over).await, 0, "at {width}");
        }
        page.reload().await;
        page.until(
            "the set is there again",
            "return !!document.querySelector('main .answer #strings')",
        )
        .await;
        let kept = "return document.querySelector('[name=depth]:checked').value";
        assert_eq!(page.script(kept).await, json!("bench"));
    });
}
