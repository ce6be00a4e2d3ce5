### Was schiefgeht.

storage-disabled = dieser Browser bewahrt nichts für diese Seite auf; speichern Sie in eine Datei, bevor Sie sie schließen
storage-later = eine neuere Fassung dieser Seite bewahrt hier ihre Daten auf. Sie lassen sich lesen, aber nicht ändern, und nichts aus diesem Tab wird aufbewahrt: Laden Sie die Seite neu, oder speichern Sie in eine Datei
storage-failed = nicht aufbewahrt: Der Browser meldet „{ $reason }“. Vielleicht ist der Datenträger voll; speichern Sie in eine Datei, bevor Sie die Seite schließen
storage-changed = ein anderer Tab schrieb zur selben Zeit
worker-stopped = die Rechnung wurde angehalten
worker-failed = die Rechnung brach ab: { $reason }
worker-silent = die Rechnung gab in { $seconds } s keine Antwort und wurde angehalten
worker-other-build = die Seite und ihre Rechnung sind aus verschiedenen Fassungen: Schließen Sie jeden Tab davon und öffnen Sie sie neu
worker-no-start = die Rechnung ließ sich nicht starten ({ $reason })
worker-no-load = die Rechnung ließ sich nicht laden
unknown-reason = unbekannter Grund
file-no-download = der Browser nahm { $name } nicht zum Herunterladen an
file-too-large = { $name } hat { $size } MB, und höchstens { $most } MB werden geöffnet
file-unreadable = { $name } ließ sich nicht lesen
file-no-text = { $name } ist keine Textdatei (UTF-8)
audio-none = dieser Browser spielt keinen Klang
offline-not-all = eine Datei fehlt oder ist beschädigt; sie wird neu geholt, sobald es ein Netz gibt
answer-unreadable = die Antwort ließ sich nicht lesen: { $reason }
answer-other = die Antwort gehört zu einer anderen Frage

## Was in einer Datei nicht zu lesen war

note-not-json = ihr Text ist nicht der eines gespeicherten Satzes
note-not-ours = es ist keine Anpassung, die diese Seite gespeichert hat
note-later = sie ist von Version { $version }, und diese Seite liest bis { $known }
note-fitting = die aufbewahrte Anpassung { $number } war nicht zu lesen und wurde ausgelassen
note-answer = { $name }: { $held } ist nicht zu lesen und wurde ausgelassen
note-fittings = aufbewahrte Sätze
note-repeated = { $name } steht mehrmals darin; der letzte Wert gilt
note-too-many = { $name }: Es sind { $count }, übernommen wurden die ersten { $most }
note-too-long = { $name }: Der Text wurde auf { $most } Zeichen gekürzt
note-more = und { $count } weitere Mängel
