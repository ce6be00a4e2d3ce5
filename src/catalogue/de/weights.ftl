### Die Gewichte, als Spannen gefragt, und der Wunsch, der einen Satz entlang der Waage bewegt.

along-title = Zwischen Stimmhaltung und Farbe
along-how = Schieben Sie: Der ganze Satz folgt.
along-picture = Bewegen Sie sich darauf: Der ganze Satz folgt.

swings-title = Die Wünsche selbst gewichten
swings-how = Denken Sie sich jeden Wunsch als eine Spanne, vom Schlechtesten zum Besten, das es gibt. Welche Spanne ist Ihnen am meisten wert? Schieben Sie sie am weitesten nach rechts und messen Sie die anderen daran. Der Satz folgt sofort.
swings-reset = Gewichten wie nach meinen Antworten
swings-counts = zählt { $share } %

swing-feel = von viel zu schlaff oder steif bis gerade richtig
swing-elasticity = von { $times }-mal zu steif oder zu elastisch bis genau wie gewünscht
swing-settling = von { $from } bis { $to } Tagen, bis sie sich gesetzt hat
swing-warmth = von { $from } bis { $to } Cent, wenn es warm wird
swing-damp = von { $from } bis { $to } Cent, wenn es feucht wird
swing-response = von der langsamsten bis zur schnellsten Ansprache, die es an dieser Stelle gibt
swing-bow-room = von { $from } bis { $to } dB zwischen dem leichtesten und dem härtesten sauberen Strich
swing-power = von weit daneben bis genau wie gewünscht
swing-brightness = von weit daneben bis genau wie gewünscht
swing-ring = von { $from } bis { $to } Schwingungen, bis ein gezupfter Ton verklungen ist
swing-durability = von { $from } bis { $to } % genutzter Festigkeit
swing-care = von außen bald abgenutzt bis lange haltbar
swing-price = von weit über dem Preis, den Sie zahlen möchten, bis innerhalb
swing-availability = von selten gemacht bis überall zu haben
swing-tuning = von { $from } bis { $to } Cent je Grad am Wirbel
