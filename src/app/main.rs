//! Starts the page.

fn main() {
    console_error_panic_hook::set_once();
    app::platform::start();
    yew::Renderer::<app::app::App>::new().render();
}
