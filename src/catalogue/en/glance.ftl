### What is said at first sight of a set, and what just changed in it.

glance-why = Why
glance-cost = But
glance-or = Or
glance-decide = Decide
glance-rather = Rather { $word }
glance-wish = Your wish
glance-when = When
glance-sure = How sure
glance-against = Compared with “{ $kind }”: { $parts }.
glance-parts = { $parts }.
glance-as-now = It is like what is on it now, and no other kind would suit you better.
glance-no-reason = Nothing that a player would notice sets it apart from the next kind.
glance-weakest = Its weakest point is { $what }, on { $strings }.
glance-or-kind = “{ $kind }”.
glance-unmet = You asked for “{ $word }”: with these strings you would hardly notice it. Set-up and bow would do more.
glance-unmet-kind = You asked for “{ $word }”: with these strings you would hardly notice it. “{ $kind }” has more of it.
when-by = Fit it by { $last }; { $safe } is safe.
when-at-once = Fit it at once: after { $last } it is likely too late.
when-too-late = It will hardly have settled by then. If nothing is broken, keep what is on.
when-days = It takes about { $likely } to settle; { $safe } to be safe.

## The strings side by side, and what folds away

column-settles = Settles in
column-numbers = In numbers
set-details = Each string in full
set-assumed = What we assumed
set-companion = What to do with it
set-kept = Kept

## What just changed

changed-title = What just changed
changed-none = No string changed. A little further one may.
changed-string = { $name }: { word-family }, stretch { $stretch_then } (before { $stretch }), settles in { $days_then } (before { $days }).
