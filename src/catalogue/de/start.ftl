### Was gesagt wird, bevor die Seite gestartet ist oder nachdem sie abgestürzt ist. Der Bau schreibt es in ihr Startskript.

start-stalled = Ropewalk ist noch nicht gestartet. Wenn nichts erscheint, ist eine seiner Dateien nicht angekommen: Laden Sie die Seite neu.
start-missing = Eine Datei von Ropewalk fehlt oder ist beschädigt: { $file }. Laden Sie die Seite neu; ohne Netz erst, wenn es wieder da ist.
start-broke = Ropewalk ist abgestürzt. Was Sie vorher eingegeben haben, ist gespeichert. Starten Sie neu, oder folgen Sie einem Link.
start-again = Neu starten
start-no-script = Ropewalk rechnet auf Ihrem eigenen Gerät. Dafür braucht es JavaScript und WebAssembly, und die sind hier abgeschaltet.
