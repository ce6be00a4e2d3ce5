### What goes wrong.

storage-disabled = this browser keeps nothing for this page, so save to a file before you close it
storage-later = a newer version of this page keeps its records here. They can be read but not changed, and nothing you do in this tab is kept: load the page again, or save to a file
storage-failed = not kept: the browser reports “{ $reason }”. Perhaps its disk is full; save to a file before you close the page
storage-changed = another tab wrote at the same time
worker-stopped = the calculation was stopped
worker-failed = the calculation broke down: { $reason }
worker-silent = the calculation gave no answer within { $seconds } s and was stopped
worker-other-build = the page and its calculation are of different builds: close every tab of it and open it anew
worker-no-start = the worker could not be started ({ $reason })
worker-no-load = the worker could not be loaded
unknown-reason = unknown reason
file-no-download = the browser did not accept { $name } as a download
file-too-large = { $name } has { $size } MB, and at most { $most } MB are opened
file-unreadable = { $name } could not be read
file-no-text = { $name } is not a text file (UTF-8)
audio-none = this browser plays no sound
offline-not-all = a file is missing or damaged; it is fetched again when there is a network
answer-unreadable = the answer could not be read: { $reason }
answer-other = the answer belongs to another question

## What a file held that could not be read

note-not-json = its text is not that of a saved fitting
note-not-ours = it is not a fitting that this page saved
note-later = it is of version { $version }, and this page reads up to { $known }
note-fitting = kept fitting { $number } could not be read and was left out
note-answer = { $name }: { $held } cannot be read and was left out
note-fittings = kept sets
note-repeated = { $name } is there more than once, and the last one was taken
note-too-many = { $name }: there are { $count }, and the first { $most } were taken
note-too-long = { $name }: the text was cut to { $most } characters
note-more = and { $count } more things
