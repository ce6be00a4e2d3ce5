// Starts the page, and says what is wrong where it does not start or breaks down.
//
// It stands apart from the page's module, for it must work when that does not.

// The last step of a build fills these in; see src/tasks/scripts.rs.
const BUILD = "";
const GLUE = "";
const MODULE = "";
const WORDS = {};

const keeper = navigator.serviceWorker;
let started = false;
let told = "";
// Whether a file of this build was fetched again since this tab began.
let restored = false;

addEventListener("error", ({ error }) => isTrap(error) && brokeDown());
addEventListener("unhandledrejection", ({ reason }) => isTrap(reason) && brokeDown());
// The module says this of a panic, which whoever called it may have caught.
addEventListener("panic", () => setTimeout(brokeDown));
keeper?.addEventListener("message", ({ data, ports }) => {
  // The service worker asks which build this tab runs, before it deletes an earlier one.
  if (data === "build") ports[0]?.postMessage(BUILD);
  restored ||= data.restored === true;
  if (restored && told === "start-missing") location.reload();
});

addEventListener("load", () => isStyled() || missing(document.querySelector("link[rel=stylesheet]").href));

start();

async function start() {
  let file = GLUE;
  try {
    const glue = await import(GLUE);
    file = MODULE;
    await glue.default({ module_or_path: MODULE });
    window.ropewalk = glue;
    started = true;
  } catch (error) {
    console.error(error);
    if (isTrap(error)) brokeDown();
    else missing(file);
  }
}

// The style sheet names the colours.
function isStyled() {
  return getComputedStyle(document.documentElement).getPropertyValue("--ink") !== "";
}

function isTrap(error) {
  const deep = error instanceof RangeError && /wasm/.test(error.stack);
  return deep || error instanceof WebAssembly.RuntimeError;
}

function brokeDown() {
  tell("start-broke");
  // The module hears of no address any more; a link leads to its room by a fresh start.
  addEventListener("hashchange", () => location.reload());
}

function missing(file) {
  tell("start-missing", file.split("/").pop());
  if (restored) location.reload();
  addEventListener("online", () => location.reload());
  keeper?.controller?.postMessage("check");
  renew().catch(() => {});
}

// Lets a newer build take over, which may be whole where this one is not. There is nothing yet to lose in this tab.
async function renew() {
  const registration = await keeper?.getRegistration();
  if (!registration) return;
  keeper.addEventListener("controllerchange", () => location.reload());
  const takeOver = () => registration.waiting?.postMessage("take over");
  registration.addEventListener("updatefound", () => registration.installing.addEventListener("statechange", takeOver));
  takeOver();
  await registration.update();
}

function tell(message, file) {
  if (told) return;
  told = message;
  document.querySelector(".stalled")?.remove();
  const language = started ? document.documentElement.lang : navigator.language.slice(0, 2);
  const words = WORDS[language] ?? WORDS.en;
  const notice = document.createElement("div");
  notice.className = "notice grave broken";
  notice.setAttribute("role", "alert");
  const text = notice.appendChild(document.createElement("p"));
  text.textContent = words[message].replace("FILE", file);
  const again = notice.appendChild(document.createElement("button"));
  again.className = "button";
  again.textContent = words["start-again"];
  again.onclick = () => location.reload();
  // The page draws what is in the body, so this stands beside it.
  document.body.before(notice);
}
