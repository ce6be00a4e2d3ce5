//! Starts the page.

fn main() {
    std::panic::set_hook(Box::new(|panic| {
        console_error_panic_hook::hook(panic);
        app::platform::tell_of_panic();
    }));
    app::platform::start();
    let language = app::hooks::preferences::first_language();
    let is_empty = !app::platform::storage::texts::expects_records();
    if language == catalogue::Language::English && app::hooks::is_early() && is_empty {
        yew::Renderer::<app::app::App>::new().render();
    } else {
        wasm_bindgen_futures::spawn_local(async move {
            // Without its messages the page speaks English, of which the first screens are always here.
            drop(app::hooks::preferences::speak(language).await);
            app::hooks::load_first().await;
            yew::Renderer::<app::app::App>::new().render();
        });
    }
}
