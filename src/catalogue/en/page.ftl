### What stands round the rooms, and in the rooms before the set.

name = Ropewalk
window-title = { $room } · Ropewalk
skip = Skip to the page
rooms = Rooms
room-fit = Fit
room-compare = Compare
room-questions = Questions
room-everything = Everything
room-set = The set
room-sources = Sources
room-class = Cores in front of a class
room-glossary = Words
room-specimen = Specimen
foot-sources = Where the numbers come from
class-open = Show cores to a class
foot-glossary = Words of the trade
foot-specimen = About this page
foot-advises = The tool advises; a luthier who sees the instrument decides.
foot-private = Everything is worked out on this machine, and nothing leaves it.
lost = There is no page at that address, so this is the first one.
undo = Undo
close = Close

## Ways on and back

back = Back
continue = Continue
find = Find strings
stop = Stop
change = Change
answer = Answer
open = Open
remove = Remove
try-again = Try again
load-again = Load the page again
check-answers = Check answers
screen-of = { $screen } of { $all }

## The front door

home-title = Find strings that suit an instrument and whoever plays it, and see why.
home-go-on = Go on with { $name }
home-afresh = Start afresh
home-path = Answer a few questions
    .more = Eight short screens, three minutes. “I don’t know” is always an answer.
home-everything = For the bench: measured length, tuning, each string, weights.
home-class = For teachers: four cores side by side, drawn, heard and compared.
home-just = Just show me a set
home-open = Open a saved file
home-not-opened = Not opened: { $reason }.
home-private = Nothing you type leaves this machine.
home-kept = Kept on this machine
home-kept-none = A set stands here once you have pressed “Keep” below it, and can be opened again with all its answers.
home-invent = Show three invented sets
home-invented = Invented, to look at
home-invented-about = A workshop in a small harbour town looks after the instruments of a youth orchestra. All of it is made up, and none of it is yours.
home-uninvent = Remove the invented sets
home-undo = The last change can be undone.
home-others = Begun in another tab
home-others-about = These answers belong to another tab, or to one that was closed. Opening them moves them here; what you are answering now is kept below.
home-unreadable = Kept here, but unreadable
home-unreadable-about = It stays as it is until you remove it. Save it to a file to look at it, or to open it with another version of this page.
unread-set = A kept set
unread-answers = Answers
unread-undo = An earlier state of the answers
unread-later = It was written by a newer version of this page.
unread-damaged = It is damaged.
unread-save = Save to a file
invented-desk-3-viola = Desk 3 viola, 15{ "\u00A0" }in (invented)
invented-desk-1-violin = Desk 1 violin, 3/4 (invented)
invented-desk-2-cello = Desk 2 cello (invented)
offline-ready = Ready for use without a network.
offline-newer = A newer version has arrived.
offline-newer-elsewhere = Another tab already uses a newer version.
offline-use = Use it now
offline-impossible = This browser does not keep the page for use without a network.
offline-failed = The page is not kept for use without a network: { $reason }.

## All questions, and the list of answers

everything-title = Everything on one page
everything-lead = Leave out whatever you don’t know: the range widens, and nothing is blocked.
check-title = Check your answers
check-nothing = Nothing is said yet. A set can be found all the same.
check-unsaid = Not said: we take the usual
check-sharpen = Each of these would sharpen the answer.

## While a set is worked out

finding-title = Finding strings
finding-not-yet = Not yet
finding-busy = Working out a set.
finding-stopped = Stopped. The answers are kept.
finding-failed = There is no answer: { $reason }. Your answers are kept.
finding-earlier = Below is the set for your earlier answers.
not-saved = Not saved: { $reason }.

## What has happened

told-empty = The answers are empty again.
told-put-by = These are the answers for this set. What you had before is kept on the first page.
told-invented = Three invented sets stand below. What is yours is as it was.
told-uninvented = The invented sets are gone. What is yours is as it was.
told-reopened = These are the answers for that set.
told-removed = “{ $name }” is removed.
told-undone = Undone. Undo once more to go back.
told-unreadable = Something kept here cannot be read. It is listed on the first page.
told-open = { $name } is open.
told-added = Kept sets added: { $count }.
told-had = What you had before is kept on the first page.
told-half-open = { $name } is open, but not all of it could be read: { $notes }.
told-not-open = { $name } was not opened: { $reason }. Nothing has changed.
told-taken = Another tab changed the answers, and this one has taken them over.
told-kept = Kept on this machine. It is on the first page.
summary-line = { $note }: { $family }, { $gauge }, { $force }

## Language

language-label = Language
language-failed = The messages of that language could not be fetched.
language-missing = The texts in your language could not be fetched, so the page is in English for now. Load it again when there is a network.
room-mute = What stands there could not be fetched. Load the page again when there is a network.
length-label = Lengths in
force-label = Forces in
warmth-label = Warmth in
habit-mm = millimetres
habit-in = inches
habit-N = newtons
habit-kg = kilograms
habit-lb = pounds
habit-C = °C
habit-F = °F

## The four cores on the front door

cores-title = Four cores, cut through, to one scale
cores-gut = Plain gut
    .means = complex and warm; feels every change of weather
cores-solid = Solid steel
    .means = focused and strong; settles at once
cores-synthetic = Synthetic bundle
    .means = close to gut; calmer in damp
cores-strand = Stranded steel
    .means = steel with a little more give
