### What is said before the page has started, or after it broke down. The build writes it into the page's start script.

start-stalled = Ropewalk has not started yet. If it does not appear, one of its files did not arrive: load the page again.
start-missing = A file of Ropewalk is missing or damaged: { $file }. Load the page again; without a network, wait until there is one.
start-broke = Ropewalk has broken down. What you entered before is kept. Start it again, or follow any link.
start-again = Start again
start-no-script = Ropewalk does its calculations on your own machine. It needs JavaScript and WebAssembly, and they are switched off here.
