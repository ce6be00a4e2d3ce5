### Was auf den ersten Blick von einem Satz gesagt wird, und was sich eben an ihm geändert hat.

glance-why = Warum
glance-cost = Aber
glance-or = Oder
glance-decide = Entscheiden
glance-rather = Lieber { $word }
glance-wish = Ihr Wunsch
glance-when = Wann
glance-sure = Wie sicher
glance-against = Verglichen mit „{ $kind }“: { $parts }.
glance-parts = { $parts }.
glance-as-now = Er ist wie der, der jetzt darauf ist, und kein anderer würde besser passen.
glance-no-reason = Nichts, was man beim Spielen merkt, unterscheidet ihn vom nächsten.
glance-weakest = Am schwächsten ist er hier: { $what }, bei { $strings }.
glance-or-kind = „{ $kind }“.
glance-unmet = Sie wünschten „{ $word }“: Mit diesen Saiten würden Sie das kaum merken. Einrichtung und Bogen tun mehr.
glance-unmet-kind = Sie wünschten „{ $word }“: Mit diesen Saiten würden Sie das kaum merken. „{ $kind }“ hat mehr davon.
when-by = Ziehen Sie ihn spätestens { $last } auf; { $safe } ist sicher.
when-at-once = Ziehen Sie ihn gleich auf: Nach { $last } ist es wahrscheinlich zu spät.
when-too-late = Bis dahin setzt er sich kaum. Wenn nichts gerissen ist, lassen Sie, was darauf ist.
when-days = Er setzt sich in etwa { $likely }; sicherheitshalber { $safe }.

## Die Saiten nebeneinander, und was sich aufklappen lässt

column-settles = Setzt sich in
column-numbers = In Zahlen
set-details = Jede Saite im Ganzen
set-assumed = Was wir angenommen haben
set-companion = Was Sie damit tun können
set-kept = Aufbewahrt

## Was sich eben geändert hat

changed-title = Was sich eben geändert hat
changed-none = Keine Saite hat sich geändert. Etwas weiter vielleicht.
changed-string = { $name }: { word-family }, Dehnung { $stretch_then } (vorher { $stretch }), setzt sich in { $days_then } (vorher { $days }).
