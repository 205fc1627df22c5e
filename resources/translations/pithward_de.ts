<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Actions</name>
    <message>
        <source>&amp;Open scan…</source>
        <translation>Scan ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open scans or add them to the bench.</source>
        <translation>Scans öffnen oder auf den Messplatz dazulegen.</translation>
    </message>
    <message>
        <source>Open &amp;project…</source>
        <translation>&amp;Projekt öffnen…</translation>
    </message>
    <message>
        <source>Open a project: its cores, readings and their history.</source>
        <translation>Ein Projekt öffnen: seine Kerne, die Messungen und deren Verlauf.</translation>
    </message>
    <message>
        <source>&amp;Who works here…</source>
        <translation>&amp;Wer hier arbeitet…</translation>
    </message>
    <message>
        <source>Say who works at this window: each edit of a project tells it.</source>
        <translation>Sagen, wer an diesem Fenster arbeitet: Jede Änderung eines Projekts nennt es.</translation>
    </message>
    <message>
        <source>Export &amp;CSV…</source>
        <translation>&amp;CSV ausgeben…</translation>
    </message>
    <message>
        <source>Write the ring widths as a table, years down.</source>
        <translation>Die Jahrringbreiten als Tabelle schreiben, die Jahre untereinander.</translation>
    </message>
    <message>
        <source>Export &amp;decadal file…</source>
        <translation>&amp;Dekadendatei ausgeben…</translation>
    </message>
    <message>
        <source>Write the ring widths as a decadal file, as dating programs read it.</source>
        <translation>Die Jahrringbreiten als Dekadendatei schreiben, wie Datierprogramme sie lesen.</translation>
    </message>
    <message>
        <source>Export &amp;JSON…</source>
        <translation>&amp;JSON ausgeben…</translation>
    </message>
    <message>
        <source>Write everything that was read, with its uncertainty.</source>
        <translation>Alles schreiben, was gemessen wurde, mit seiner Unsicherheit.</translation>
    </message>
    <message>
        <source>Export &amp;picture…</source>
        <translation>&amp;Bild ausgeben…</translation>
    </message>
    <message>
        <source>Write a picture of the scan with its boundaries.</source>
        <translation>Ein Bild des Scans mit den Jahrringgrenzen schreiben.</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>Close the window.</source>
        <translation>Das Fenster schließen.</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>Take the last change back.</source>
        <translation>Die letzte Änderung zurücknehmen.</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>Do again what was taken back.</source>
        <translation>Noch einmal tun, was zurückgenommen wurde.</translation>
    </message>
    <message>
        <source>&amp;Confirm and go on</source>
        <translation>&amp;Bestätigen und weiter</translation>
    </message>
    <message>
        <source>Confirm the boundary in hand and take up the next one.</source>
        <translation>Die Grenze in der Hand bestätigen und die nächste aufnehmen.</translation>
    </message>
    <message>
        <source>Confirm all &amp;sure ones</source>
        <translation>Alle &amp;sicheren bestätigen</translation>
    </message>
    <message>
        <source>Confirm every boundary with a whole line; it is recorded as done in bulk.</source>
        <translation>Jede Grenze mit durchgezogener Linie bestätigen; es wird als gesammelt bestätigt vermerkt.</translation>
    </message>
    <message>
        <source>Ne&amp;xt boundary</source>
        <translation>&amp;Nächste Grenze</translation>
    </message>
    <message>
        <source>Take up the next boundary toward the pith.</source>
        <translation>Die nächste Grenze zum Mark hin aufnehmen.</translation>
    </message>
    <message>
        <source>Pre&amp;vious boundary</source>
        <translation>&amp;Vorige Grenze</translation>
    </message>
    <message>
        <source>Take up the next boundary toward the bark.</source>
        <translation>Die nächste Grenze zur Rinde hin aufnehmen.</translation>
    </message>
    <message>
        <source>&amp;Add boundary here</source>
        <translation>Grenze hier &amp;einfügen</translation>
    </message>
    <message>
        <source>Add the boundary that the wood shows near the cursor.</source>
        <translation>Die Grenze einfügen, die das Holz beim Mauszeiger zeigt.</translation>
    </message>
    <message>
        <source>Add boundary &amp;freely</source>
        <translation>Grenze &amp;frei einfügen</translation>
    </message>
    <message>
        <source>Add a boundary at the cursor, whatever the wood shows.</source>
        <translation>Am Mauszeiger eine Grenze einfügen, gleich was das Holz zeigt.</translation>
    </message>
    <message>
        <source>&amp;Delete boundary</source>
        <translation>Grenze &amp;löschen</translation>
    </message>
    <message>
        <source>Delete the boundary in hand.</source>
        <translation>Die Grenze in der Hand löschen.</translation>
    </message>
    <message>
        <source>Turn &amp;left</source>
        <translation>Nach &amp;links drehen</translation>
    </message>
    <message>
        <source>Turn the boundary in hand one degree to the left.</source>
        <translation>Die Grenze in der Hand um ein Grad nach links drehen.</translation>
    </message>
    <message>
        <source>Turn r&amp;ight</source>
        <translation>Nach rech&amp;ts drehen</translation>
    </message>
    <message>
        <source>Turn the boundary in hand one degree to the right.</source>
        <translation>Die Grenze in der Hand um ein Grad nach rechts drehen.</translation>
    </message>
    <message>
        <source>Fals&amp;e ring</source>
        <translation>S&amp;cheinring</translation>
    </message>
    <message>
        <source>The boundary in hand is no year's end: turn it down.</source>
        <translation>Die Grenze in der Hand ist kein Jahresende: Sie wird verworfen.</translation>
    </message>
    <message>
        <source>&amp;Take what was turned down</source>
        <translation>Verworfene &amp;übernehmen</translation>
    </message>
    <message>
        <source>Take the candidate under the cursor as a boundary.</source>
        <translation>Die verworfene Grenze unter dem Mauszeiger doch als Grenze nehmen.</translation>
    </message>
    <message>
        <source>Locally a&amp;bsent ring</source>
        <translation>Lokal &amp;ausfallender Jahrring</translation>
    </message>
    <message>
        <source>Mark a year of width 0 at the boundary in hand, just outside the ring that it closes.</source>
        <translation>An der Grenze in der Hand ein Jahr mit der Breite 0 vermerken, gleich außerhalb des Jahrrings, den sie abschließt.</translation>
    </message>
    <message>
        <source>N&amp;o absent ring</source>
        <translation>&amp;Kein ausfallender Jahrring</translation>
    </message>
    <message>
        <source>Take away the absent ring at the boundary in hand.</source>
        <translation>Den ausfallenden Jahrring an der Grenze in der Hand wegnehmen.</translation>
    </message>
    <message>
        <source>Crac&amp;k…</source>
        <translation>&amp;Riss…</translation>
    </message>
    <message>
        <source>Click the two edges of a crack: its breadth is no wood.</source>
        <translation>Die beiden Ränder eines Risses anklicken: Seine Breite ist kein Holz.</translation>
    </message>
    <message>
        <source>Lost &amp;wood…</source>
        <translation>Verlorenes &amp;Holz…</translation>
    </message>
    <message>
        <source>Click the two edges of a stretch where wood is lost: its rings get no width.</source>
        <translation>Die beiden Ränder einer Strecke anklicken, auf der Holz fehlt: Ihre Jahrringe erhalten keine Breite.</translation>
    </message>
    <message>
        <source>Change brea&amp;k…</source>
        <translation>Bruch ä&amp;ndern…</translation>
    </message>
    <message>
        <source>Say what the break under the cursor is and how many rings are gone, or remove it.</source>
        <translation>Sagen, was der Bruch unter dem Mauszeiger ist und wie viele Jahrringe fehlen, oder ihn entfernen.</translation>
    </message>
    <message>
        <source>&amp;Note…</source>
        <translation>Noti&amp;z…</translation>
    </message>
    <message>
        <source>Write a note on the boundary in hand.</source>
        <translation>Eine Notiz zur Grenze in der Hand schreiben.</translation>
    </message>
    <message>
        <source>Take the &amp;proposal</source>
        <translation>&amp;Vorschlag annehmen</translation>
    </message>
    <message>
        <source>Keep as it is</source>
        <translation>Lassen, wie es ist</translation>
    </message>
    <message>
        <source>Can't be told</source>
        <translation>Nicht zu entscheiden</translation>
    </message>
    <message>
        <source>&amp;Find cores</source>
        <translation>Kerne &amp;suchen</translation>
    </message>
    <message>
        <source>Look for cores again; readings of this scan are replaced.</source>
        <translation>Noch einmal nach Kernen suchen; die Messungen dieses Scans werden ersetzt.</translation>
    </message>
    <message>
        <source>&amp;Draw path</source>
        <translation>Weg &amp;zeichnen</translation>
    </message>
    <message>
        <source>Click a path from bark to pith and measure along it.</source>
        <translation>Einen Weg von der Rinde zum Mark klicken und daran entlang messen.</translation>
    </message>
    <message>
        <source>S&amp;wap bark and pith</source>
        <translation>Rinde und Mark &amp;tauschen</translation>
    </message>
    <message>
        <source>Read the core again from its other end.</source>
        <translation>Den Kern vom anderen Ende her neu messen.</translation>
    </message>
    <message>
        <source>&amp;Extend path to here</source>
        <translation>Weg bis hierher &amp;verlängern</translation>
    </message>
    <message>
        <source>Let the path go on to the cursor from its nearer end, and read what is new.</source>
        <translation>Den Weg vom näheren Ende bis zum Mauszeiger weiterführen und das Neue messen.</translation>
    </message>
    <message>
        <source>&amp;Bend path here</source>
        <translation>Weg hier &amp;knicken</translation>
    </message>
    <message>
        <source>Put a bend into the path at the cursor, to be dragged; Ctrl and a drag do both.</source>
        <translation>Am Mauszeiger einen Knick zum Ziehen in den Weg setzen; Strg und Ziehen tut beides.</translation>
    </message>
    <message>
        <source>Take bend &amp;away</source>
        <translation>Knick weg&amp;nehmen</translation>
    </message>
    <message>
        <source>Take away the bend under the cursor.</source>
        <translation>Den Knick unter dem Mauszeiger wegnehmen.</translation>
    </message>
    <message>
        <source>Step &amp;aside along boundary</source>
        <translation>Entlang der Grenze &amp;ausweichen</translation>
    </message>
    <message>
        <source>Let the path step along the boundary in hand to the cursor's side and go on from there.</source>
        <translation>Den Weg entlang der Grenze in der Hand zur Seite des Mauszeigers ausweichen und dort weitergehen lassen.</translation>
    </message>
    <message>
        <source>&amp;Go on on another scan…</source>
        <translation>Auf anderem Scan &amp;weiter…</translation>
    </message>
    <message>
        <source>Let the path go on on another scan of this core: from the boundary in hand, or over a gap.</source>
        <translation>Den Weg auf einem anderen Scan dieses Kerns weitergehen lassen: von der Grenze in der Hand aus oder über eine Lücke.</translation>
    </message>
    <message>
        <source>P&amp;ith here</source>
        <translation>&amp;Mark hier</translation>
    </message>
    <message>
        <source>Put the pith at the cursor; its mark and the arc beside the innermost ring can be dragged too.</source>
        <translation>Das Mark an den Mauszeiger setzen; sein Zeichen und der Bogen neben dem innersten Jahrring lassen sich auch ziehen.</translation>
    </message>
    <message>
        <source>Pith by the rin&amp;gs</source>
        <translation>Mark nach den &amp;Ringen</translation>
    </message>
    <message>
        <source>Judge the pith by the curve of the rings again, where it was placed by hand.</source>
        <translation>Das Mark wieder nach der Krümmung der Jahrringe beurteilen, wo es von Hand gesetzt wurde.</translation>
    </message>
    <message>
        <source>Set &amp;year…</source>
        <translation>&amp;Jahr setzen…</translation>
    </message>
    <message>
        <source>Type the year of the outermost ring.</source>
        <translation>Das Jahr des äußersten Jahrrings eingeben.</translation>
    </message>
    <message>
        <source>Scale by a &amp;ruler…</source>
        <translation>Maßstab nach &amp;Lineal…</translation>
    </message>
    <message>
        <source>Click a line along the marks of a ruler on the scan, to read the scale from it.</source>
        <translation>Eine Linie entlang der Striche eines Lineals auf dem Scan klicken, um den Maßstab daran abzulesen.</translation>
    </message>
    <message>
        <source>Sca&amp;le…</source>
        <translation>Ma&amp;ßstab…</translation>
    </message>
    <message>
        <source>Who says what of the scan's scale, and which one is used.</source>
        <translation>Wer was über den Maßstab des Scans sagt, und welcher gilt.</translation>
    </message>
    <message>
        <source>&amp;Next finding</source>
        <translation>Nächster &amp;Befund</translation>
    </message>
    <message>
        <source>Go to the next place that wants a look.</source>
        <translation>Zur nächsten Stelle gehen, die angesehen werden will.</translation>
    </message>
    <message>
        <source>&amp;Previous finding</source>
        <translation>Voriger Be&amp;fund</translation>
    </message>
    <message>
        <source>Go to the place before.</source>
        <translation>Zur Stelle davor gehen.</translation>
    </message>
    <message>
        <source>Next co&amp;re</source>
        <translation>Nächster &amp;Kern</translation>
    </message>
    <message>
        <source>Turn to the next core of this scan.</source>
        <translation>Zum nächsten Kern dieses Scans gehen.</translation>
    </message>
    <message>
        <source>Previous c&amp;ore</source>
        <translation>Voriger K&amp;ern</translation>
    </message>
    <message>
        <source>Turn to the core before.</source>
        <translation>Zum Kern davor gehen.</translation>
    </message>
    <message>
        <source>Ne&amp;xt scan</source>
        <translation>Nä&amp;chster Scan</translation>
    </message>
    <message>
        <source>Turn to the next scan on the bench.</source>
        <translation>Zum nächsten Scan auf dem Messplatz gehen.</translation>
    </message>
    <message>
        <source>Pre&amp;vious scan</source>
        <translation>V&amp;origer Scan</translation>
    </message>
    <message>
        <source>Turn to the scan before.</source>
        <translation>Zum Scan davor gehen.</translation>
    </message>
    <message>
        <source>Stop &amp;work</source>
        <translation>Arbeit an&amp;halten</translation>
    </message>
    <message>
        <source>Stop what runs beside the window; nothing of it is kept.</source>
        <translation>Anhalten, was neben dem Fenster läuft; nichts davon wird behalten.</translation>
    </message>
    <message>
        <source>Reading is &amp;done</source>
        <translation>Messung ist &amp;fertig</translation>
    </message>
    <message>
        <source>Say that you are done with this reading: then it waits for a second person.</source>
        <translation>Sagen, dass Sie mit dieser Messung fertig sind: Dann wartet sie auf eine zweite Person.</translation>
    </message>
    <message>
        <source>&amp;Accept this reading</source>
        <translation>Diese Messung &amp;gelten lassen</translation>
    </message>
    <message>
        <source>Let this reading stand for its core, where it has several.</source>
        <translation>Diese Messung für ihren Kern stehen lassen, wo es mehrere gibt.</translation>
    </message>
    <message>
        <source>Next core to &amp;measure</source>
        <translation>Nächster Kern zu &amp;messen</translation>
    </message>
    <message>
        <source>Go to the next core of the project that waits for its analyst, returned ones first.</source>
        <translation>Zum nächsten Kern des Projekts gehen, der auf die Bearbeitung wartet, zurückgegebene zuerst.</translation>
    </message>
    <message>
        <source>&amp;History…</source>
        <translation>&amp;Verlauf…</translation>
    </message>
    <message>
        <source>Who did what to this core, and the reading as it was at any time.</source>
        <translation>Wer was an diesem Kern getan hat, und die Messung, wie sie zu jeder Zeit war.</translation>
    </message>
    <message>
        <source>Compare readin&amp;gs…</source>
        <translation>Messungen ver&amp;gleichen…</translation>
    </message>
    <message>
        <source>How far two readings of this core agree, and each boundary that only one of them has.</source>
        <translation>Wie weit zwei Messungen dieses Kerns übereinstimmen, und jede Grenze, die nur eine von ihnen hat.</translation>
    </message>
    <message>
        <source>To the &amp;bench</source>
        <translation>Zum Mess&amp;platz</translation>
    </message>
    <message>
        <source>Measure cores.</source>
        <translation>Kerne messen.</translation>
    </message>
    <message>
        <source>To the &amp;review</source>
        <translation>Zur P&amp;rüfung</translation>
    </message>
    <message>
        <source>See what waits for a second person, the worst first.</source>
        <translation>Ansehen, was auf eine zweite Person wartet, das Schlimmste zuerst.</translation>
    </message>
    <message>
        <source>&amp;Pass and go on</source>
        <translation>&amp;Annehmen und weiter</translation>
    </message>
    <message>
        <source>It was settled rightly; go to the next.</source>
        <translation>Es wurde richtig erledigt; zum nächsten gehen.</translation>
    </message>
    <message>
        <source>&amp;Return and go on</source>
        <translation>&amp;Zurückgeben und weiter</translation>
    </message>
    <message>
        <source>Send it back to its analyst with the comment; go to the next.</source>
        <translation>Mit der Bemerkung an die Bearbeitung zurückgeben; zum nächsten gehen.</translation>
    </message>
    <message>
        <source>&amp;Comment</source>
        <translation>&amp;Bemerkung</translation>
    </message>
    <message>
        <source>Write a comment that goes with the verdict.</source>
        <translation>Eine Bemerkung schreiben, die zum Urteil gehört.</translation>
    </message>
    <message>
        <source>&amp;Open on the bench</source>
        <translation>Am Messplatz ö&amp;ffnen</translation>
    </message>
    <message>
        <source>Go to this place on the bench.</source>
        <translation>Zu dieser Stelle am Messplatz gehen.</translation>
    </message>
    <message>
        <source>Analysts' &amp;list, or back</source>
        <translation>&amp;Liste der Bearbeitung, oder zurück</translation>
    </message>
    <message>
        <source>Show what waits for the analysts instead, or again what waits for the second person.</source>
        <translation>Stattdessen zeigen, was auf die Bearbeitung wartet, oder wieder, was auf die zweite Person wartet.</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>&amp;Näher</translation>
    </message>
    <message>
        <source>Come closer.</source>
        <translation>Näher herangehen.</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>&amp;Weiter weg</translation>
    </message>
    <message>
        <source>Step back.</source>
        <translation>Zurücktreten.</translation>
    </message>
    <message>
        <source>&amp;Whole scan</source>
        <translation>&amp;Ganzer Scan</translation>
    </message>
    <message>
        <source>&amp;Full size</source>
        <translation>&amp;Volle Größe</translation>
    </message>
    <message>
        <source>Show each pixel of the scan as one on the screen.</source>
        <translation>Jedes Pixel des Scans als eines auf dem Bildschirm zeigen.</translation>
    </message>
    <message>
        <source>To the &amp;bark</source>
        <translation>Zur &amp;Rinde</translation>
    </message>
    <message>
        <source>Go to the bark end of the path.</source>
        <translation>Zum Rindenende des Weges gehen.</translation>
    </message>
    <message>
        <source>To the &amp;pith</source>
        <translation>Zum &amp;Mark</translation>
    </message>
    <message>
        <source>Go to the inner end of the path.</source>
        <translation>Zum inneren Ende des Weges gehen.</translation>
    </message>
    <message>
        <source>Turn the view a quarter to the left.</source>
        <translation>Die Ansicht um ein Viertel nach links drehen.</translation>
    </message>
    <message>
        <source>Turn &amp;right</source>
        <translation>Nach &amp;rechts drehen</translation>
    </message>
    <message>
        <source>Turn the view a quarter to the right.</source>
        <translation>Die Ansicht um ein Viertel nach rechts drehen.</translation>
    </message>
    <message>
        <source>&amp;Level the core</source>
        <translation>Kern &amp;waagrecht</translation>
    </message>
    <message>
        <source>Turn the view so that the present core lies level, its bark to the left.</source>
        <translation>Die Ansicht so drehen, dass der Kern waagrecht liegt, die Rinde links.</translation>
    </message>
    <message>
        <source>Field &amp;data</source>
        <translation>&amp;Felddaten</translation>
    </message>
    <message>
        <source>What the field sheet says of this core, to be read and changed; again folds it away.</source>
        <translation>Was der Feldbogen von diesem Kern sagt, zu lesen und zu ändern; noch einmal klappt es weg.</translation>
    </message>
    <message>
        <source>F&amp;old side panel</source>
        <translation>&amp;Seitenfeld klappen</translation>
    </message>
    <message>
        <source>Fold the side panel away, or out again.</source>
        <translation>Das Seitenfeld weg- oder wieder ausklappen.</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>Light or dark, as the desktop says.</source>
        <translation>Hell oder dunkel, wie der Schreibtisch es sagt.</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>Always light.</source>
        <translation>Immer hell.</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>Always dark.</source>
        <translation>Immer dunkel.</translation>
    </message>
    <message>
        <source>Open the &amp;demo site</source>
        <translation>&amp;Demo-Standort öffnen</translation>
    </message>
    <message>
        <source>Open sixteen rendered cores of an invented site.</source>
        <translation>Sechzehn gerechnete Kerne eines erfundenen Standorts öffnen.</translation>
    </message>
    <message>
        <source>&amp;Keys and mouse</source>
        <translation>&amp;Tasten und Maus</translation>
    </message>
    <message>
        <source>Show every key and what the mouse does.</source>
        <translation>Jede Taste zeigen, und was die Maus tut.</translation>
    </message>
    <message>
        <source>To the &amp;site</source>
        <translation>Zum &amp;Standort</translation>
    </message>
    <message>
        <source>See how the series of the site go with each other, and where a ring is missing or counted twice.</source>
        <translation>Sehen, wie die Reihen des Standorts zueinander passen und wo ein Jahrring fehlt oder doppelt gezählt ist.</translation>
    </message>
    <message>
        <source>Show the whole scan, or all years.</source>
        <translation>Den ganzen Scan zeigen, oder alle Jahre.</translation>
    </message>
    <message>
        <source>&amp;New project…</source>
        <translation>&amp;Neues Projekt…</translation>
    </message>
    <message>
        <source>Make a project from a field sheet and a folder of scans.</source>
        <translation>Aus einem Feldbogen und einem Ordner mit Scans ein Projekt anlegen.</translation>
    </message>
    <message>
        <source>Write &amp;report…</source>
        <translation>Be&amp;richt schreiben…</translation>
    </message>
    <message>
        <source>Tell of the whole project as a PDF or a web page: site, method, cores, dating, review.</source>
        <translation>Vom ganzen Projekt als PDF oder Webseite berichten: Standort, Methode, Kerne, Datierung, Prüfung.</translation>
    </message>
    <message>
        <source>&amp;Measure all cores</source>
        <translation>Alle Kerne &amp;messen</translation>
    </message>
    <message>
        <source>Measure every core of the project that has no reading yet.</source>
        <translation>Jeden Kern des Projekts messen, der noch keine Messung hat.</translation>
    </message>
    <message>
        <source>Do what the finding proposes; on the bench go to the next.</source>
        <translation>Tun, was der Befund vorschlägt; auf der Werkbank weiter zum nächsten.</translation>
    </message>
    <message>
        <source>Leave it as it is, looked at; on the bench go to the next.</source>
        <translation>Lassen, wie es ist, angesehen; auf der Werkbank weiter zum nächsten.</translation>
    </message>
    <message>
        <source>Nobody can tell on this core; on the bench go to the next.</source>
        <translation>An diesem Kern nicht zu entscheiden; auf der Werkbank weiter zum nächsten.</translation>
    </message>
    <message>
        <source>&amp;Handbook</source>
        <translation>&amp;Handbuch</translation>
    </message>
    <message>
        <source>A first hour, the views, each finding, and the limits.</source>
        <translation>Eine erste Stunde, die Ansichten, jeder Befund und die Grenzen (englisch).</translation>
    </message>
    <message>
        <source>Archive pac&amp;kage…</source>
        <translation>Archivpa&amp;ket…</translation>
    </message>
    <message>
        <source>Put series, metadata, report and checksums in one zip, ready for the archive.</source>
        <translation>Reihen, Metadaten, Bericht und Prüfsummen in ein Zip packen, bereit fürs Archiv.</translation>
    </message>
    <message>
        <source>&amp;Scans and cores…</source>
        <translation>&amp;Scans und Kerne…</translation>
    </message>
    <message>
        <source>Say which scan belongs to which core, where names and codes don't.</source>
        <translation>Sagen, welcher Scan zu welchem Kern gehört, wo Namen und Codes es nicht tun.</translation>
    </message>
    <message>
        <source>&amp;To the progress</source>
        <translation>&amp;Zum Fortschritt</translation>
    </message>
    <message>
        <source>See how far each core is, what stands against it and what is next.</source>
        <translation>Sehen, wie weit jeder Kern ist, was gegen ihn steht und was als Nächstes kommt.</translation>
    </message>
</context>
<context>
    <name>BoundaryGrip</name>
    <message>
        <source>let go: turn it so</source>
        <translation>loslassen: so drehen</translation>
    </message>
    <message>
        <source>let go: put it here</source>
        <translation>loslassen: hierher setzen</translation>
    </message>
    <message>
        <source>click: take up · Del deletes</source>
        <translation>Klick: aufnehmen · Entf löscht</translation>
    </message>
    <message>
        <source>click: take up · C confirms · Del deletes</source>
        <translation>Klick: aufnehmen · C bestätigt · Entf löscht</translation>
    </message>
    <message>
        <source>%1
drag: turn</source>
        <translation>%1
ziehen: drehen</translation>
    </message>
    <message>
        <source>%1
drag: move</source>
        <translation>%1
ziehen: verschieben</translation>
    </message>
    <message>
        <source>turned down
Shift+F takes it as a boundary</source>
        <translation>verworfen
Umschalt+F nimmt es als Grenze</translation>
    </message>
    <message>
        <source>double click: add a boundary</source>
        <translation>Doppelklick: Grenze einfügen</translation>
    </message>
</context>
<context>
    <name>DrawPathTool</name>
    <message>
        <source>pith end</source>
        <translation>Markende</translation>
    </message>
    <message>
        <source>bark end</source>
        <translation>Rindenende</translation>
    </message>
    <message>
        <source>bark</source>
        <translation>Rinde</translation>
    </message>
    <message>
        <source>pith</source>
        <translation>Mark</translation>
    </message>
    <message>
        <source>Draw path: click the %1. R starts at the other end, Escape gives up.</source>
        <translation>Weg zeichnen: auf das %1 klicken. R beginnt am anderen Ende, Esc gibt auf.</translation>
    </message>
    <message>
        <source>Draw path: click on toward the %1. Backspace takes a point back, Escape gives up.</source>
        <translation>Weg zeichnen: weiterklicken, Richtung %1. Rücktaste nimmt einen Punkt zurück, Esc gibt auf.</translation>
    </message>
    <message>
        <source>Draw path: click on toward the %1, Enter measures. Backspace takes a point back, Escape gives up.</source>
        <translation>Weg zeichnen: weiterklicken, Richtung %1, Eingabe misst. Rücktaste nimmt einen Punkt zurück, Esc gibt auf.</translation>
    </message>
</context>
<context>
    <name>Exports</name>
    <message>
        <source>Comma-separated values</source>
        <translation>Werte mit Komma getrennt (CSV)</translation>
    </message>
    <message>
        <source>Decadal file</source>
        <translation>Dekadendatei</translation>
    </message>
    <message>
        <source>JSON</source>
        <translation>JSON</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Bild</translation>
    </message>
</context>
<context>
    <name>FieldSheet</name>
    <message>
        <source>Species</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>Cored on</source>
        <translation>Gebohrt am</translation>
    </message>
    <message>
        <source>As 2024-06-30, or 2024-06, or 2024.</source>
        <translation>Wie 2024-06-30, oder 2024-06, oder 2024.</translation>
    </message>
    <message>
        <source>Tree was</source>
        <translation>Baum war</translation>
    </message>
    <message>
        <source>Diameter, cm</source>
        <translation>Durchmesser, cm</translation>
    </message>
    <message>
        <source>Of the stem with its bark, at breast height.</source>
        <translation>Des Stammes mit Rinde, in Brusthöhe.</translation>
    </message>
    <message>
        <source>Bark, mm</source>
        <translation>Rinde, mm</translation>
    </message>
    <message>
        <source>Thickness of the bark on one side.</source>
        <translation>Dicke der Rinde auf einer Seite.</translation>
    </message>
    <message>
        <source>Height, cm</source>
        <translation>Höhe, cm</translation>
    </message>
    <message>
        <source>Above the ground where the core was taken.</source>
        <translation>Über dem Boden, wo der Kern entnommen wurde.</translation>
    </message>
    <message>
        <source>Cored from, °</source>
        <translation>Gebohrt von, °</translation>
    </message>
    <message>
        <source>Compass degrees of the side that the borer entered.</source>
        <translation>Kompassgrad der Seite, an der der Bohrer eintrat.</translation>
    </message>
    <message>
        <source>Leans to, °</source>
        <translation>Neigt nach, °</translation>
    </message>
    <message>
        <source>Compass degrees of the way the stem leans.</source>
        <translation>Kompassgrad der Richtung, in die der Stamm sich neigt.</translation>
    </message>
    <message>
        <source>Lean, °</source>
        <translation>Neigung, °</translation>
    </message>
    <message>
        <source>How far the stem stands from upright.</source>
        <translation>Wie weit der Stamm von der Senkrechten abweicht.</translation>
    </message>
    <message>
        <source>Slope faces, °</source>
        <translation>Hang nach, °</translation>
    </message>
    <message>
        <source>Compass degrees of the way down the slope.</source>
        <translation>Kompassgrad der Richtung hangabwärts.</translation>
    </message>
    <message>
        <source>Borer, mm</source>
        <translation>Bohrer, mm</translation>
    </message>
    <message>
        <source>Diameter of the core that the borer takes.</source>
        <translation>Durchmesser des Kerns, den der Bohrer nimmt.</translation>
    </message>
    <message>
        <source>Under the bark</source>
        <translation>Unter der Rinde</translation>
    </message>
    <message>
        <source>What was seen of the outermost ring in the field.</source>
        <translation>Was im Feld vom äußersten Jahrring zu sehen war.</translation>
    </message>
    <message>
        <source>Pith</source>
        <translation>Mark</translation>
    </message>
    <message>
        <source>What was seen of the pith in the field.</source>
        <translation>Was im Feld vom Mark zu sehen war.</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>How many pieces the core came out in.</source>
        <translation>In wie vielen Stücken der Kern herauskam.</translation>
    </message>
    <message>
        <source>Scan</source>
        <translation>Scan</translation>
    </message>
    <message>
        <source>The file with the core. It stays while the core has a reading.</source>
        <translation>Die Datei mit dem Kern. Sie bleibt, solange der Kern eine Messung hat.</translation>
    </message>
    <message>
        <source>Latitude, °</source>
        <translation>Breite, °</translation>
    </message>
    <message>
        <source>Degrees north; south of the equator negative.</source>
        <translation>Grad Nord; südlich des Äquators negativ.</translation>
    </message>
    <message>
        <source>Longitude, °</source>
        <translation>Länge, °</translation>
    </message>
    <message>
        <source>Degrees east; in the west negative.</source>
        <translation>Grad Ost; im Westen negativ.</translation>
    </message>
    <message>
        <source>Elevation, m</source>
        <translation>Meereshöhe, m</translation>
    </message>
    <message>
        <source>Collector</source>
        <translation>Gebohrt durch</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>conifer</source>
        <translation>Nadelholz</translation>
    </message>
    <message>
        <source>ring-porous</source>
        <translation>ringporig</translation>
    </message>
    <message>
        <source>diffuse-porous</source>
        <translation>zerstreutporig</translation>
    </message>
    <message>
        <source>living</source>
        <translation>lebend</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>tot</translation>
    </message>
    <message>
        <source>complete</source>
        <translation>vollständig</translation>
    </message>
    <message>
        <source>unfinished</source>
        <translation>unfertig</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>reached</source>
        <translation>erreicht</translation>
    </message>
    <message>
        <source>near</source>
        <translation>nahe</translation>
    </message>
    <message>
        <source>missed</source>
        <translation>verfehlt</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
</context>
<context>
    <name>FindingWords</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>turned down here, %1 sure</source>
        <translation>hier verworfen, zu %1 sicher</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>proposal taken</source>
        <translation>Vorschlag angenommen</translation>
    </message>
    <message>
        <source>kept as it is</source>
        <translation>gelassen, wie es ist</translation>
    </message>
    <message>
        <source>can't be told</source>
        <translation>nicht zu entscheiden</translation>
    </message>
    <message>
        <source>Ready to be passed</source>
        <translation>Bereit zur Annahme</translation>
    </message>
    <message>
        <source>Every finding is judged; passing says so of the whole reading.</source>
        <translation>Jeder Befund ist beurteilt; die Annahme sagt es von der ganzen Messung.</translation>
    </message>
    <message>
        <source>%1 · %2 rings at stake</source>
        <translation>%1 · %2 Jahrringe hängen daran</translation>
    </message>
    <message>
        <source>returned · %1</source>
        <translation>zurückgegeben · %1</translation>
    </message>
    <message>
        <source>Site %1, tree %2</source>
        <translation>Standort %1, Baum %2</translation>
    </message>
    <message>
        <source>Reason: %1</source>
        <translation>Grund: %1</translation>
    </message>
    <message>
        <source>Proposal: %1 (%2 that this is right)</source>
        <translation>Vorschlag: %1 (zu %2 richtig)</translation>
    </message>
    <message>
        <source>the boundary that stands, %1 sure</source>
        <translation>die Grenze, die steht, zu %1 sicher</translation>
    </message>
    <message>
        <source>The program also saw: %1</source>
        <translation>Das Programm sah auch: %1</translation>
    </message>
    <message>
        <source>nothing else here</source>
        <translation>hier sonst nichts</translation>
    </message>
    <message>
        <source>Settled by %1: %2</source>
        <translation>Erledigt von %1: %2</translation>
    </message>
    <message>
        <source>Nobody has settled it yet</source>
        <translation>Noch von niemandem erledigt</translation>
    </message>
    <message>
        <source>Comment: %1</source>
        <translation>Bemerkung: %1</translation>
    </message>
</context>
<context>
    <name>Gestures</name>
    <message>
        <source>Wheel</source>
        <translation>Rad</translation>
    </message>
    <message>
        <source>Zoom at the cursor; with Shift move along, with Ctrl turn by a degree.</source>
        <translation>Am Mauszeiger näher oder weiter; mit Umschalt entlang, mit Strg um ein Grad drehen.</translation>
    </message>
    <message>
        <source>Drag, arrows</source>
        <translation>Ziehen, Pfeile</translation>
    </message>
    <message>
        <source>Move the scan; arrows with Shift in large steps.</source>
        <translation>Den Scan bewegen; Pfeile mit Umschalt in großen Schritten.</translation>
    </message>
    <message>
        <source>Click a boundary</source>
        <translation>Klick auf eine Grenze</translation>
    </message>
    <message>
        <source>Take it in hand. A click on another core turns to that core.</source>
        <translation>Sie in die Hand nehmen. Ein Klick auf einen anderen Kern wechselt zu ihm.</translation>
    </message>
    <message>
        <source>Double click the wood</source>
        <translation>Doppelklick auf das Holz</translation>
    </message>
    <message>
        <source>Add the boundary that the wood shows there; with Shift just there.</source>
        <translation>Die Grenze einfügen, die das Holz dort zeigt; mit Umschalt genau dort.</translation>
    </message>
    <message>
        <source>Drag a boundary</source>
        <translation>Eine Grenze ziehen</translation>
    </message>
    <message>
        <source>Near the path: move it. At the end of its line: turn it.</source>
        <translation>Nahe am Weg: verschieben. Am Ende ihrer Linie: drehen.</translation>
    </message>
    <message>
        <source>Drag a bend or an end of the path</source>
        <translation>Knick oder Ende des Weges ziehen</translation>
    </message>
    <message>
        <source>Move it. Further out the path gets longer, and what is new is read.</source>
        <translation>Verschieben. Weiter hinaus wird der Weg länger, und das Neue wird gemessen.</translation>
    </message>
    <message>
        <source>Ctrl and drag the path</source>
        <translation>Strg und den Weg ziehen</translation>
    </message>
    <message>
        <source>Bend it there.</source>
        <translation>Ihn dort knicken.</translation>
    </message>
    <message>
        <source>Drag the pith</source>
        <translation>Das Mark ziehen</translation>
    </message>
    <message>
        <source>Put it elsewhere; at the small squares: bend the innermost ring.</source>
        <translation>Es woandershin setzen; an den kleinen Quadraten: den innersten Jahrring biegen.</translation>
    </message>
    <message>
        <source>Double click a break</source>
        <translation>Doppelklick auf einen Bruch</translation>
    </message>
    <message>
        <source>Say what it is and how many rings are gone, or remove it.</source>
        <translation>Sagen, was er ist und wie viele Jahrringe fehlen, oder ihn entfernen.</translation>
    </message>
    <message>
        <source>Right click</source>
        <translation>Rechtsklick</translation>
    </message>
    <message>
        <source>All that can be done with what is there.</source>
        <translation>Alles, was sich mit dem tun lässt, was dort ist.</translation>
    </message>
    <message>
        <source>H, held</source>
        <translation>H, gehalten</translation>
    </message>
    <message>
        <source>Hide every mark while it is held.</source>
        <translation>Alle Zeichen verbergen, solange sie gehalten wird.</translation>
    </message>
    <message>
        <source>Enter, Backspace, Escape</source>
        <translation>Eingabe, Rücktaste, Esc</translation>
    </message>
    <message>
        <source>With a tool in hand: finish, take the last point back, give up.</source>
        <translation>Mit einem Werkzeug in der Hand: fertig, letzten Punkt zurücknehmen, aufgeben.</translation>
    </message>
</context>
<context>
    <name>Marks</name>
    <message>
        <source>%1 absent</source>
        <translation>%1 fällt aus</translation>
    </message>
    <message>
        <source>bark</source>
        <translation>Rinde</translation>
    </message>
    <message>
        <source>bark?</source>
        <translation>Rinde?</translation>
    </message>
    <message>
        <source>to pith</source>
        <translation>zum Mark</translation>
    </message>
    <message>
        <source>goes on elsewhere</source>
        <translation>geht anderswo weiter</translation>
    </message>
</context>
<context>
    <name>Menus</name>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Core</source>
        <translation>&amp;Kern</translation>
    </message>
    <message>
        <source>&amp;Review</source>
        <translation>&amp;Prüfung</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>&amp;Farben</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
</context>
<context>
    <name>PathGrip</name>
    <message>
        <source>let go: the path runs here</source>
        <translation>loslassen: der Weg verläuft hier</translation>
    </message>
    <message>
        <source>bark end of the path
drag: longer or shorter · R swaps the ends</source>
        <translation>Rindenende des Weges
ziehen: länger oder kürzer · R tauscht die Enden</translation>
    </message>
    <message>
        <source>inner end of the path
drag: longer or shorter</source>
        <translation>inneres Ende des Weges
ziehen: länger oder kürzer</translation>
    </message>
    <message>
        <source>bend of the path
drag: move · Shift+V: take away</source>
        <translation>Knick des Weges
ziehen: verschieben · Umschalt+V: wegnehmen</translation>
    </message>
    <message>
        <source>drag: bend the path here</source>
        <translation>ziehen: den Weg hier knicken</translation>
    </message>
</context>
<context>
    <name>PithGrip</name>
    <message>
        <source>let go: the pith lies here</source>
        <translation>loslassen: das Mark liegt hier</translation>
    </message>
    <message>
        <source>arc of the innermost ring
drag: bend it until it fits</source>
        <translation>Bogen des innersten Jahrrings
ziehen: biegen, bis er passt</translation>
    </message>
    <message>
        <source>the pith
drag: put it elsewhere · Shift+Z judges it by the rings</source>
        <translation>das Mark
ziehen: woandershin setzen · Umschalt+Z beurteilt es nach den Ringen</translation>
    </message>
</context>
<context>
    <name>ProgressWords</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>no years</source>
        <translation>keine Jahre</translation>
    </message>
    <message>
        <source>no scan</source>
        <translation>kein Scan</translation>
    </message>
    <message>
        <source>scanned</source>
        <translation>gescannt</translation>
    </message>
    <message>
        <source>not in its place</source>
        <translation>nicht an seinem Ort</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>partly</source>
        <translation>teilweise</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>wants a look</source>
        <translation>bitte ansehen</translation>
    </message>
    <message>
        <source>no scan is known</source>
        <translation>kein Scan ist bekannt</translation>
    </message>
    <message>
        <source>its scan is not in its place</source>
        <translation>sein Scan ist nicht an seinem Ort</translation>
    </message>
    <message>
        <source>open findings: %1</source>
        <translation>offene Befunde: %1</translation>
    </message>
    <message>
        <source>boundaries confirmed by nobody: %1</source>
        <translation>von niemandem bestätigte Grenzen: %1</translation>
    </message>
    <message>
        <source>its rings have no years</source>
        <translation>seine Ringe haben keine Jahre</translation>
    </message>
    <message>
        <source>rings missing or counted twice: %1</source>
        <translation>fehlende oder doppelt gezählte Ringe: %1</translation>
    </message>
    <message>
        <source>it fits with %1 added to all of its years</source>
        <translation>er passt, wenn zu allen Jahren %1 gezählt wird</translation>
    </message>
    <message>
        <source>returned by the second person</source>
        <translation>von der zweiten Person zurückgegeben</translation>
    </message>
    <message>
        <source>cores that wait for a scan: %1</source>
        <translation>Kerne, die auf einen Scan warten: %1</translation>
    </message>
    <message>
        <source>cores to be measured: %1</source>
        <translation>zu messende Kerne: %1</translation>
    </message>
    <message>
        <source>cores with open findings: %1</source>
        <translation>Kerne mit offenen Befunden: %1</translation>
    </message>
    <message>
        <source>cores with boundaries that nobody has confirmed: %1</source>
        <translation>Kerne mit Grenzen, die niemand bestätigt hat: %1</translation>
    </message>
    <message>
        <source>cores whose years want a look: %1</source>
        <translation>Kerne, deren Jahre anzusehen sind: %1</translation>
    </message>
    <message>
        <source>cores that are ready to be called done: %1</source>
        <translation>Kerne, die fertig gemeldet werden können: %1</translation>
    </message>
    <message>
        <source>cores that wait for a second person: %1</source>
        <translation>Kerne, die auf eine zweite Person warten: %1</translation>
    </message>
    <message>
        <source>all that can be done is done: the report</source>
        <translation>alles, was geht, ist getan: der Bericht</translation>
    </message>
    <message>
        <source>Scanned</source>
        <translation>Gescannt</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Confirmed</source>
        <translation>Bestätigt</translation>
    </message>
    <message>
        <source>Dated</source>
        <translation>Datiert</translation>
    </message>
    <message>
        <source>Reviewed</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>%1 rings</source>
        <translation>%1 Ringe</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>Nothing stands against it.</source>
        <translation>Nichts steht gegen ihn.</translation>
    </message>
    <message>
        <source>It has no reading yet.</source>
        <translation>Er hat noch keine Messung.</translation>
    </message>
    <message>
        <source>Against it: %1.</source>
        <translation>Gegen ihn steht: %1.</translation>
    </message>
    <message>
        <source>Find its scan</source>
        <translation>Seinen Scan finden</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
    <message>
        <source>Settle findings</source>
        <translation>Befunde klären</translation>
    </message>
    <message>
        <source>Confirm boundaries</source>
        <translation>Grenzen bestätigen</translation>
    </message>
    <message>
        <source>Look at its years</source>
        <translation>Seine Jahre ansehen</translation>
    </message>
    <message>
        <source>Say that it is done</source>
        <translation>Fertig melden</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>This project has no cores.</source>
        <translation>Dieses Projekt hat keine Kerne.</translation>
    </message>
    <message>
        <source>Next for the site: %1</source>
        <translation>Als Nächstes am Standort: %1</translation>
    </message>
    <message>
        <source>%1, %2 first</source>
        <translation>%1, zuerst %2</translation>
    </message>
    <message>
        <source>Measure all cores</source>
        <translation>Alle Kerne messen</translation>
    </message>
    <message>
        <source>Write the report…</source>
        <translation>Bericht schreiben…</translation>
    </message>
</context>
<context>
    <name>ReadingState</name>
    <message>
        <source>proposed</source>
        <translation>vorgeschlagen</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>fertig</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>zurückgegeben</translation>
    </message>
</context>
<context>
    <name>Sentences</name>
    <message>
        <source>this boundary is annual with a probability of only %1</source>
        <translation>diese Grenze ist nur mit einer Wahrscheinlichkeit von %1 eine Jahrringgrenze</translation>
    </message>
    <message>
        <source>look at it; if the change is soft on both sides or does not cross the core, take it out</source>
        <translation>ansehen; wenn der Übergang auf beiden Seiten weich ist oder nicht quer durch den Kern läuft, herausnehmen</translation>
    </message>
    <message>
        <source>a weak change here may be a boundary (%1): %2</source>
        <translation>ein schwacher Übergang hier kann eine Grenze sein (%1): %2</translation>
    </message>
    <message>
        <source>a weak change here may be a boundary (%1)</source>
        <translation>ein schwacher Übergang hier kann eine Grenze sein (%1)</translation>
    </message>
    <message>
        <source>look at it; if it closes a year, add it</source>
        <translation>ansehen; wenn er ein Jahr abschließt, setzen</translation>
    </message>
    <message>
        <source>it does not cross the core</source>
        <translation>er läuft nicht quer durch den Kern</translation>
    </message>
    <message>
        <source>soft on both sides</source>
        <translation>auf beiden Seiten weich</translation>
    </message>
    <message>
        <source>the wood does not get lighter again inward</source>
        <translation>das Holz wird nach innen nicht wieder heller</translation>
    </message>
    <message>
        <source>much weaker than its neighbours</source>
        <translation>viel schwächer als seine Nachbarn</translation>
    </message>
    <message>
        <source>the core is broken here; it was taken as a crack that lost no wood</source>
        <translation>der Kern ist hier gebrochen; es wurde als Riss ohne Verlust von Holz genommen</translation>
    </message>
    <message>
        <source>compare the two edges; if they don't fit, mark lost wood and say how many rings are gone</source>
        <translation>beide Bruchkanten vergleichen; wenn sie nicht passen, Holzverlust eintragen und sagen, wie viele Ringe fehlen</translation>
    </message>
    <message>
        <source>the core is broken here within a ring wider than its neighbours: a boundary may lie in the break</source>
        <translation>der Kern ist hier in einem Ring gebrochen, der breiter ist als seine Nachbarn: im Bruch kann eine Grenze liegen</translation>
    </message>
    <message>
        <source>look at both edges of the break; if a year ends at one of them, add its boundary there</source>
        <translation>beide Kanten des Bruchs ansehen; wenn an einer ein Jahr endet, dort seine Grenze setzen</translation>
    </message>
    <message>
        <source>the wood under the bark is dark like latewood: growth of the outermost ring had ended</source>
        <translation>das Holz unter der Rinde ist dunkel wie Spätholz: das Wachstum des äußersten Rings war abgeschlossen</translation>
    </message>
    <message>
        <source>what lies outside the first boundary is even: an unfinished ring, which has no width, or inner bark</source>
        <translation>was außerhalb der ersten Grenze liegt, ist gleichmäßig: ein unfertiger Ring, der keine Breite hat, oder Bast</translation>
    </message>
    <message>
        <source>no bark was seen at the outer end: outer rings may be lost</source>
        <translation>am äußeren Ende war keine Rinde zu sehen: äußere Ringe können fehlen</translation>
    </message>
    <message>
        <source>look at the outer end, and say what it is if it is otherwise</source>
        <translation>das äußere Ende ansehen und sagen, was es ist, wenn es anders ist</translation>
    </message>
    <message>
        <source>the bark was said to be at this end, but the wood looks as if it were at the other</source>
        <translation>die Rinde soll an diesem Ende sein, aber das Holz sieht aus, als wäre sie am anderen</translation>
    </message>
    <message>
        <source>it is not sure which end of the core is bark (%1)</source>
        <translation>es ist nicht sicher, welches Ende des Kerns die Rinde ist (%1)</translation>
    </message>
    <message>
        <source>look at the curve of the rings and the outer end; turn the path round if it is the other way</source>
        <translation>die Krümmung der Ringe und das äußere Ende ansehen; den Pfad umdrehen, wenn es andersherum ist</translation>
    </message>
    <message>
        <source>the wood was taken as conifer (%1): %2</source>
        <translation>das Holz wurde als Nadelholz genommen (%1): %2</translation>
    </message>
    <message>
        <source>the wood was taken as ring-porous (%1): %2</source>
        <translation>das Holz wurde als ringporig genommen (%1): %2</translation>
    </message>
    <message>
        <source>the wood was taken as diffuse-porous (%1): %2</source>
        <translation>das Holz wurde als zerstreutporig genommen (%1): %2</translation>
    </message>
    <message>
        <source>choose the kind of wood if it is another one</source>
        <translation>die Holzart wählen, wenn es eine andere ist</translation>
    </message>
    <message>
        <source>the rings show the same profile across the whole core</source>
        <translation>die Ringe zeigen über den ganzen Kern das gleiche Profil</translation>
    </message>
    <message>
        <source>the grain consists of large vessels</source>
        <translation>die Struktur besteht aus großen Gefäßen</translation>
    </message>
    <message>
        <source>the grain consists of small vessels</source>
        <translation>die Struktur besteht aus kleinen Gefäßen</translation>
    </message>
    <message>
        <source>the rings seem to bend round a pith here, so the path ends (%1)</source>
        <translation>die Ringe scheinen sich hier um ein Mark zu krümmen, darum endet der Pfad (%1)</translation>
    </message>
    <message>
        <source>look at the rings; if they bend the same way on both sides, draw one path along the core</source>
        <translation>die Ringe ansehen; wenn sie sich auf beiden Seiten gleich krümmen, einen Pfad am Kern entlang zeichnen</translation>
    </message>
    <message>
        <source>the rings may bend round a pith here (%1): the core may go past it</source>
        <translation>die Ringe können sich hier um ein Mark krümmen (%1): der Kern geht vielleicht daran vorbei</translation>
    </message>
    <message>
        <source>look at the rings; if they bend the other way beyond, draw a path from each end to the pith</source>
        <translation>die Ringe ansehen; wenn sie sich jenseits andersherum krümmen, von jedem Ende einen Pfad zum Mark zeichnen</translation>
    </message>
    <message>
        <source>the ruler gives %1 pixels to the millimetre, the file's tag %2: they differ by %3; if one step of its marks is %4, %5 is right</source>
        <translation>das Lineal ergibt %1 Pixel je Millimeter, die Angabe der Datei %2: Unterschied %3; wenn ein Schritt seiner Striche %4 ist, stimmt %5</translation>
    </message>
    <message>
        <source>the ruler gives %1 pixels to the millimetre, the resolution given %2: they differ by %3; if one step of its marks is %4, %5 is right</source>
        <translation>das Lineal ergibt %1 Pixel je Millimeter, die genannte Auflösung %2: Unterschied %3; wenn ein Schritt seiner Striche %4 ist, stimmt %5</translation>
    </message>
    <message>
        <source>the ruler gives %1 pixels to the millimetre, the file's tag %2: they differ by %3</source>
        <translation>das Lineal ergibt %1 Pixel je Millimeter, die Angabe der Datei %2: Unterschied %3</translation>
    </message>
    <message>
        <source>the ruler gives %1 pixels to the millimetre, the resolution given %2: they differ by %3</source>
        <translation>das Lineal ergibt %1 Pixel je Millimeter, die genannte Auflösung %2: Unterschied %3</translation>
    </message>
    <message>
        <source>the ruler's scale was taken; check that the line runs along it; if one step of its marks is %1, %2 is right</source>
        <translation>der Maßstab des Lineals wurde genommen; prüfen, ob die Linie daran entlangläuft; wenn ein Schritt seiner Striche %1 ist, stimmt %2</translation>
    </message>
    <message>
        <source>the ruler's scale was taken; check that the line runs along it</source>
        <translation>der Maßstab des Lineals wurde genommen; prüfen, ob die Linie daran entlangläuft</translation>
    </message>
    <message>
        <source>the file's tag</source>
        <translation>die Angabe der Datei</translation>
    </message>
    <message>
        <source>the resolution given</source>
        <translation>die genannte Auflösung</translation>
    </message>
    <message>
        <source>the lengths of the ruler's marks look like steps of %1, but %2 was given</source>
        <translation>die Längen der Striche des Lineals sehen nach Schritten von %1 aus, aber %2 wurde genannt</translation>
    </message>
    <message>
        <source>look at the ruler; measure again with the other graduation if that is right</source>
        <translation>das Lineal ansehen; mit der anderen Teilung noch einmal messen, wenn sie stimmt</translation>
    </message>
    <message>
        <source>the ruler lies across this core, so the scale along the core was not measured</source>
        <translation>das Lineal liegt quer zu diesem Kern, der Maßstab längs des Kerns wurde also nicht gemessen</translation>
    </message>
    <message>
        <source>give a second ruler line that runs the core's way</source>
        <translation>eine zweite Lineallinie in Richtung des Kerns angeben</translation>
    </message>
    <message>
        <source>the scale told was kept; look at the ruler and measure again along it, from %1 to %2; if one step of its marks is %3, %4 is right</source>
        <translation>der genannte Maßstab wurde behalten; das Lineal ansehen und daran entlang noch einmal messen, von %1 bis %2; wenn ein Schritt seiner Striche %3 ist, stimmt %4</translation>
    </message>
    <message>
        <source>the scale told was kept; look at the ruler and measure again along it, from %1 to %2</source>
        <translation>der genannte Maßstab wurde behalten; das Lineal ansehen und daran entlang noch einmal messen, von %1 bis %2</translation>
    </message>
    <message>
        <source>the core was taken %1 degrees from the line of lean: %2</source>
        <translation>der Kern wurde %1 Grad von der Linie der Neigung entnommen: %2</translation>
    </message>
    <message>
        <source>compression wood is likely, on the side that the stem leans to</source>
        <translation>Druckholz ist wahrscheinlich, auf der Seite, zu der der Stamm sich neigt</translation>
    </message>
    <message>
        <source>compression wood may lie on the far side, that the stem leans to</source>
        <translation>Druckholz kann auf der fernen Seite liegen, zu der der Stamm sich neigt</translation>
    </message>
    <message>
        <source>tension wood may lie on the far, upper side</source>
        <translation>Zugholz kann auf der fernen, oberen Seite liegen</translation>
    </message>
    <message>
        <source>tension wood is likely, on the upper side</source>
        <translation>Zugholz ist wahrscheinlich, auf der oberen Seite</translation>
    </message>
    <message>
        <source>compare its widths with a core square to the lean, and leave it out where they differ</source>
        <translation>seine Breiten mit einem Kern quer zur Neigung vergleichen und ihn weglassen, wo sie sich unterscheiden</translation>
    </message>
    <message>
        <source>no lean is noted, and the core was taken %1 degrees from the line of the slope's fall: reaction wood is possible</source>
        <translation>keine Neigung ist vermerkt, und der Kern wurde %1 Grad von der Falllinie des Hangs entnommen: Reaktionsholz ist möglich</translation>
    </message>
    <message>
        <source>note the lean (0 where there is none); core along the contour next time</source>
        <translation>die Neigung vermerken (0, wo keine ist); beim nächsten Mal entlang der Höhenlinie bohren</translation>
    </message>
    <message>
        <source>bark or outer wood is lost, so an unknown number of outer rings is gone and the date of coring does not date the series; its outermost year is the earliest possible last year</source>
        <translation>Rinde oder äußeres Holz fehlt, also fehlt eine unbekannte Zahl äußerer Ringe und der Tag der Entnahme datiert die Reihe nicht; ihr äußerstes Jahr ist das früheste mögliche letzte Jahr</translation>
    </message>
    <message>
        <source>date it by the other cores of the site</source>
        <translation>an den anderen Kernen des Standorts datieren</translation>
    </message>
    <message>
        <source>from bark to pith it is %1 to %2 by this core, but %3 to %4 by the stem's diameter</source>
        <translation>von der Rinde zum Mark sind es nach diesem Kern %1 bis %2, aber %3 bis %4 nach dem Durchmesser des Stamms</translation>
    </message>
    <message>
        <source>check the diameter, the bark, the scale and the pith</source>
        <translation>Durchmesser, Rinde, Maßstab und Mark prüfen</translation>
    </message>
    <message>
        <source>cored in %1, in its growing season: the outermost ring is unfinished, so it has a breadth but no width</source>
        <translation>entnommen im %1, in der Wachstumszeit: der äußerste Ring ist unfertig, er hat also eine Ausdehnung, aber keine Breite</translation>
    </message>
    <message>
        <source>leave it out of the widths, as it is</source>
        <translation>aus den Breiten weglassen, wie es ist</translation>
    </message>
    <message>
        <source>cored in %1, in its growing season: the outermost ring is unfinished, but the wood under the bark is taken as %2</source>
        <translation>entnommen im %1, in der Wachstumszeit: der äußerste Ring ist unfertig, aber das Holz unter der Rinde wird als %2 genommen</translation>
    </message>
    <message>
        <source>look at the wood under the bark and say that the ring is unfinished, or set the season</source>
        <translation>das Holz unter der Rinde ansehen und sagen, dass der Ring unfertig ist, oder die Wachstumszeit setzen</translation>
    </message>
    <message>
        <source>the pith's year is %1 (%2 to %3) by this core, but %4 (%5 to %6) by core %7 of the same tree</source>
        <translation>das Jahr des Marks ist nach diesem Kern %1 (%2 bis %3), aber %4 (%5 bis %6) nach Kern %7 desselben Baums</translation>
    </message>
    <message>
        <source>check the dating and the pith of both</source>
        <translation>Datierung und Mark beider prüfen</translation>
    </message>
    <message>
        <source>the pith was placed by hand, but %1</source>
        <translation>das Mark wurde von Hand gesetzt, aber %1</translation>
    </message>
    <message>
        <source>the innermost leg of the path has no boundary with a scale</source>
        <translation>der innerste Abschnitt des Pfads hat keine Grenze mit Maßstab</translation>
    </message>
    <message>
        <source>mark one first</source>
        <translation>zuerst eine setzen</translation>
    </message>
    <message>
        <source>no ring has a width, so rings to the pith can't be counted</source>
        <translation>kein Ring hat eine Breite, die Ringe bis zum Mark lassen sich also nicht zählen</translation>
    </message>
    <message>
        <source>mark two boundaries first</source>
        <translation>zuerst zwei Grenzen setzen</translation>
    </message>
    <message>
        <source>the pith can't lie on the bark's side of the innermost boundary</source>
        <translation>das Mark kann nicht auf der Rindenseite der innersten Grenze liegen</translation>
    </message>
    <message>
        <source>put it further in, or delete the boundaries beyond it</source>
        <translation>weiter nach innen setzen oder die Grenzen dahinter löschen</translation>
    </message>
    <message>
        <source>a ring round that place would be too flat on this core to tell its distance</source>
        <translation>ein Ring um diese Stelle wäre auf diesem Kern zu flach, um ihre Entfernung zu zeigen</translation>
    </message>
    <message>
        <source>put the pith nearer, or leave it untold</source>
        <translation>das Mark näher setzen oder es offen lassen</translation>
    </message>
    <message>
        <source>the pith lies on the core, and about %1 rings lie between the innermost boundary and it</source>
        <translation>das Mark liegt auf dem Kern, und etwa %1 Ringe liegen zwischen der innersten Grenze und ihm</translation>
    </message>
    <message>
        <source>mark the boundaries between, or draw the path to the pith</source>
        <translation>die Grenzen dazwischen setzen oder den Pfad bis zum Mark zeichnen</translation>
    </message>
    <message>
        <source>with two boundaries or fewer nothing can be said of the pith</source>
        <translation>mit zwei Grenzen oder weniger lässt sich über das Mark nichts sagen</translation>
    </message>
    <message>
        <source>the innermost leg of the path has no boundary, so nothing can be said of the pith</source>
        <translation>der innerste Abschnitt des Pfads hat keine Grenze, über das Mark lässt sich also nichts sagen</translation>
    </message>
    <message>
        <source>the curve of the innermost rings could not be traced</source>
        <translation>die Krümmung der innersten Ringe ließ sich nicht verfolgen</translation>
    </message>
    <message>
        <source>the rings at the inner end are too flat to tell where the pith is</source>
        <translation>die Ringe am inneren Ende sind zu flach, um zu zeigen, wo das Mark ist</translation>
    </message>
    <message>
        <source>the centre of the rings' curve would lie beyond the stem</source>
        <translation>der Mittelpunkt der Ringkrümmung läge außerhalb des Stamms</translation>
    </message>
    <message>
        <source>the rings at the inner end bend both ways, so their curve does not tell where the pith is</source>
        <translation>die Ringe am inneren Ende krümmen sich in beide Richtungen, ihre Krümmung zeigt also nicht, wo das Mark ist</translation>
    </message>
    <message>
        <source>the rings at the inner end bend away from the inner end, so the pith can't lie there</source>
        <translation>die Ringe am inneren Ende krümmen sich von ihm weg, das Mark kann also nicht dort liegen</translation>
    </message>
    <message>
        <source>look at the inner end; without the pith the age is only a least age</source>
        <translation>das innere Ende ansehen; ohne Mark ist das Alter nur ein Mindestalter</translation>
    </message>
    <message>
        <source>the pith is %1 to %2 from the innermost boundary, but more than %3 by %4</source>
        <translation>das Mark ist %1 bis %2 von der innersten Grenze entfernt, aber mehr als %3 nach %4</translation>
    </message>
    <message>
        <source>the pith is %1 to %2 from the innermost boundary, but %3 to %4 by %5</source>
        <translation>das Mark ist %1 bis %2 von der innersten Grenze entfernt, aber %3 bis %4 nach %5</translation>
    </message>
    <message>
        <source>look at the innermost rings; where growth was uneven, trust neither</source>
        <translation>die innersten Ringe ansehen; wo das Wachstum ungleich war, keinem trauen</translation>
    </message>
    <message>
        <source>arc height and chord (Duncan 1989)</source>
        <translation>Bogenhöhe und Sehne (Duncan 1989)</translation>
    </message>
    <message>
        <source>concentric circles (Applequist 1958)</source>
        <translation>konzentrischen Kreisen (Applequist 1958)</translation>
    </message>
    <message>
        <source>the stem's radius</source>
        <translation>dem Radius des Stamms</translation>
    </message>
    <message>
        <source>the curve of the rings</source>
        <translation>der Krümmung der Ringe</translation>
    </message>
    <message>
        <source>the other cores of the site show that ring %1 is missing (%2 alone); %3</source>
        <translation>die anderen Kerne des Standorts zeigen, dass Ring %1 fehlt (nur %2); %3</translation>
    </message>
    <message>
        <source>the other cores of the site show that ring %1 is missing (%2 to %3); %4</source>
        <translation>die anderen Kerne des Standorts zeigen, dass Ring %1 fehlt (%2 bis %3); %4</translation>
    </message>
    <message>
        <source>the other cores of the site show that ring %1 is counted twice (%2 alone); %3</source>
        <translation>die anderen Kerne des Standorts zeigen, dass Ring %1 doppelt gezählt ist (nur %2); %3</translation>
    </message>
    <message>
        <source>the other cores of the site show that ring %1 is counted twice (%2 to %3); %4</source>
        <translation>die anderen Kerne des Standorts zeigen, dass Ring %1 doppelt gezählt ist (%2 bis %3); %4</translation>
    </message>
    <message>
        <source>this boundary may be none (%1)</source>
        <translation>diese Grenze ist vielleicht keine (%1)</translation>
    </message>
    <message>
        <source>the tree may have laid no ring here: nothing shows it</source>
        <translation>der Baum hat hier vielleicht keinen Ring gebildet: nichts zeigt es</translation>
    </message>
    <message>
        <source>look at ring %1</source>
        <translation>Ring %1 ansehen</translation>
    </message>
    <message>
        <source>put a boundary in here, the inner one of ring %1</source>
        <translation>hier eine Grenze setzen, die innere von Ring %1</translation>
    </message>
    <message>
        <source>take this boundary out: it divides ring %1</source>
        <translation>diese Grenze herausnehmen: sie teilt Ring %1</translation>
    </message>
    <message>
        <source>mark ring %1 as locally absent</source>
        <translation>Ring %1 als lokal fehlend eintragen</translation>
    </message>
    <message>
        <source>complete</source>
        <translation>vollständig</translation>
    </message>
    <message>
        <source>unfinished</source>
        <translation>unfertig</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>January</source>
        <translation>Januar</translation>
    </message>
    <message>
        <source>February</source>
        <translation>Februar</translation>
    </message>
    <message>
        <source>March</source>
        <translation>März</translation>
    </message>
    <message>
        <source>April</source>
        <translation>April</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <source>June</source>
        <translation>Juni</translation>
    </message>
    <message>
        <source>July</source>
        <translation>Juli</translation>
    </message>
    <message>
        <source>August</source>
        <translation>August</translation>
    </message>
    <message>
        <source>September</source>
        <translation>September</translation>
    </message>
    <message>
        <source>October</source>
        <translation>Oktober</translation>
    </message>
    <message>
        <source>November</source>
        <translation>November</translation>
    </message>
    <message>
        <source>December</source>
        <translation>Dezember</translation>
    </message>
    <message>
        <source>proposed by the program</source>
        <translation>vom Programm vorgeschlagen</translation>
    </message>
    <message>
        <source>marked by %1, passed by %2, who changed it too</source>
        <translation>fertig gemeldet von %1, freigegeben von %2, von dem auch Änderungen sind</translation>
    </message>
    <message>
        <source>marked by %1, passed by %2</source>
        <translation>fertig gemeldet von %1, freigegeben von %2</translation>
    </message>
    <message>
        <source>passed by %1, who marked it too</source>
        <translation>freigegeben von %1, wie auch fertig gemeldet</translation>
    </message>
    <message>
        <source>marked by %1</source>
        <translation>fertig gemeldet von %1</translation>
    </message>
    <message>
        <source>returned to %1</source>
        <translation>zurückgegeben an %1</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>fertig gemeldet</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>zurückgegeben</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>freigegeben</translation>
    </message>
    <message>
        <source>proposed</source>
        <translation>vorgeschlagen</translation>
    </message>
    <message>
        <source>%1 boundaries: %2 looked at, %3 confirmed in bulk, %4 confirmed by nobody</source>
        <translation>%1 Grenzen: %2 angesehen, %3 gesammelt bestätigt, %4 von niemandem bestätigt</translation>
    </message>
    <message>
        <source>%1 looked at, %2 confirmed in bulk, %3 confirmed by nobody</source>
        <translation>%1 angesehen, %2 gesammelt bestätigt, %3 von niemandem bestätigt</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Wiederholt: %1</translation>
    </message>
    <message>
        <source>Add a ring boundary</source>
        <translation>Grenze setzen</translation>
    </message>
    <message>
        <source>Remove a ring boundary</source>
        <translation>Grenze herausnehmen</translation>
    </message>
    <message>
        <source>Change a ring boundary</source>
        <translation>Grenze ändern</translation>
    </message>
    <message>
        <source>Add a candidate</source>
        <translation>Kandidaten setzen</translation>
    </message>
    <message>
        <source>Remove a candidate</source>
        <translation>Kandidaten herausnehmen</translation>
    </message>
    <message>
        <source>Change a candidate</source>
        <translation>Kandidaten ändern</translation>
    </message>
    <message>
        <source>Add a break</source>
        <translation>Bruch eintragen</translation>
    </message>
    <message>
        <source>Remove a break</source>
        <translation>Bruch herausnehmen</translation>
    </message>
    <message>
        <source>Change a break</source>
        <translation>Bruch ändern</translation>
    </message>
    <message>
        <source>Add a locally absent ring</source>
        <translation>Lokal fehlenden Ring eintragen</translation>
    </message>
    <message>
        <source>Remove a locally absent ring</source>
        <translation>Lokal fehlenden Ring herausnehmen</translation>
    </message>
    <message>
        <source>Change a locally absent ring</source>
        <translation>Lokal fehlenden Ring ändern</translation>
    </message>
    <message>
        <source>Add a finding</source>
        <translation>Befund eintragen</translation>
    </message>
    <message>
        <source>Remove a finding</source>
        <translation>Befund herausnehmen</translation>
    </message>
    <message>
        <source>Change a finding</source>
        <translation>Befund ändern</translation>
    </message>
    <message>
        <source>Set the reading to %1</source>
        <translation>Messung auf %1 setzen</translation>
    </message>
    <message>
        <source>Set the outermost year</source>
        <translation>Äußerstes Jahr setzen</translation>
    </message>
    <message>
        <source>Set the wood type</source>
        <translation>Holzart setzen</translation>
    </message>
    <message>
        <source>Set the wood under the bark</source>
        <translation>Holz unter der Rinde setzen</translation>
    </message>
    <message>
        <source>Place the pith by hand</source>
        <translation>Mark von Hand setzen</translation>
    </message>
    <message>
        <source>Judge the pith</source>
        <translation>Mark beurteilen</translation>
    </message>
    <message>
        <source>Note on the reading</source>
        <translation>Notiz zur Messung</translation>
    </message>
    <message>
        <source>Change the reading's entries</source>
        <translation>Angaben der Messung ändern</translation>
    </message>
    <message>
        <source>Change the path</source>
        <translation>Pfad ändern</translation>
    </message>
    <message>
        <source>Change the scale</source>
        <translation>Maßstab ändern</translation>
    </message>
    <message>
        <source>Confirm ring boundaries in bulk</source>
        <translation>Grenzen gesammelt bestätigen</translation>
    </message>
    <message>
        <source>Mark as a false ring</source>
        <translation>Als Scheinring eintragen</translation>
    </message>
    <message>
        <source>Take a candidate as a ring boundary</source>
        <translation>Kandidaten als Grenze nehmen</translation>
    </message>
    <message>
        <source>Open a finding again</source>
        <translation>Befund wieder öffnen</translation>
    </message>
    <message>
        <source>Take the proposal of a finding</source>
        <translation>Vorschlag eines Befunds annehmen</translation>
    </message>
    <message>
        <source>Keep what a finding is about</source>
        <translation>Lassen, worum es in einem Befund geht</translation>
    </message>
    <message>
        <source>Say of a finding that it can't be told</source>
        <translation>Von einem Befund sagen, dass es sich nicht sagen lässt</translation>
    </message>
    <message>
        <source>Settle a finding</source>
        <translation>Befund erledigen</translation>
    </message>
    <message>
        <source>Go on on another scan</source>
        <translation>Auf einem anderen Scan weitergehen</translation>
    </message>
    <message>
        <source>Step aside along a ring boundary</source>
        <translation>Seitlich an einer Grenze entlang versetzen</translation>
    </message>
    <message>
        <source>Make the project</source>
        <translation>Projekt anlegen</translation>
    </message>
    <message>
        <source>Accept reading %1</source>
        <translation>Messung %1 gelten lassen</translation>
    </message>
    <message>
        <source>Note the scan %1</source>
        <translation>Scan %1 vermerken</translation>
    </message>
    <message>
        <source>Enter %1</source>
        <translation>%1 eintragen</translation>
    </message>
    <message>
        <source>Propose a reading</source>
        <translation>Messung vorschlagen</translation>
    </message>
    <message>
        <source>Hold the tree's cores against each other</source>
        <translation>Die Kerne des Baums vergleichen</translation>
    </message>
    <message>
        <source>Return a finding</source>
        <translation>Befund zurückgeben</translation>
    </message>
    <message>
        <source>Pass a finding</source>
        <translation>Befund freigeben</translation>
    </message>
    <message>
        <source>Pass the reading</source>
        <translation>Messung freigeben</translation>
    </message>
    <message>
        <source>Check against the changed field data</source>
        <translation>Mit den geänderten Felddaten prüfen</translation>
    </message>
    <message>
        <source>several rings are only a few pixels wide here: others between them may not show</source>
        <translation>hier sind mehrere Ringe nur wenige Pixel breit: weitere dazwischen sind vielleicht nicht zu sehen</translation>
    </message>
    <message>
        <source>look at the whole stretch; scan the core at a higher resolution if rings can't be told</source>
        <translation>Die ganze Strecke ansehen; den Kern feiner einscannen, wenn die Ringe nicht zu unterscheiden sind</translation>
    </message>
    <message>
        <source>the other cores of the site hint that ring %1 is missing (%2 alone); %3</source>
        <translation>die anderen Kerne des Standorts deuten an, dass Ring %1 fehlt (nur %2); %3</translation>
    </message>
    <message>
        <source>the other cores of the site hint that ring %1 is missing (%2 to %3); %4</source>
        <translation>die anderen Kerne des Standorts deuten an, dass Ring %1 fehlt (%2 bis %3); %4</translation>
    </message>
    <message>
        <source>the other cores of the site hint that ring %1 is counted twice (%2 alone); %3</source>
        <translation>die anderen Kerne des Standorts deuten an, dass Ring %1 doppelt gezählt ist (nur %2); %3</translation>
    </message>
    <message>
        <source>the other cores of the site hint that ring %1 is counted twice (%2 to %3); %4</source>
        <translation>die anderen Kerne des Standorts deuten an, dass Ring %1 doppelt gezählt ist (%2 bis %3); %4</translation>
    </message>
    <message>
        <source>Note the size and checksum of the scan %1</source>
        <translation>Größe und Prüfsumme des Scans %1 festhalten</translation>
    </message>
    <message>
        <source>core %1 has no calendar years and is left out of the series: %2</source>
        <translation>Kern %1 hat keine Kalenderjahre und steht nicht bei den Reihen: %2</translation>
    </message>
    <message>
        <source>the field sheet does not tell %1</source>
        <translation>der Feldbogen nennt nicht %1</translation>
    </message>
    <message>
        <source>fill it in on the field sheet, or set the year by hand</source>
        <translation>im Feldbogen ausfüllen oder das Jahr von Hand setzen</translation>
    </message>
    <message>
        <source>its outermost ring was given no year</source>
        <translation>sein äußerster Ring bekam kein Jahr</translation>
    </message>
    <message>
        <source>set the year by hand</source>
        <translation>das Jahr von Hand setzen</translation>
    </message>
    <message>
        <source>fill in %1 on the field sheet</source>
        <translation>%1 im Feldbogen ausfüllen</translation>
    </message>
    <message>
        <source>fill it in on the field sheet</source>
        <translation>im Feldbogen ausfüllen</translation>
    </message>
    <message>
        <source>write it into the template file before sending it</source>
        <translation>vor dem Abschicken in die Vorlagendatei schreiben</translation>
    </message>
    <message>
        <source>there is one series only, so nothing bears out its years</source>
        <translation>es gibt nur eine Reihe, nichts stützt also ihre Jahre</translation>
    </message>
    <message>
        <source>core more trees</source>
        <translation>mehr Bäume bohren</translation>
    </message>
    <message>
        <source>%1, the study's name</source>
        <translation>%1, der Name der Studie</translation>
    </message>
    <message>
        <source>%1, the investigators</source>
        <translation>%1, die Bearbeiter</translation>
    </message>
    <message>
        <source>%1, the site's name</source>
        <translation>%1, der Name des Standorts</translation>
    </message>
    <message>
        <source>%1, the latitude</source>
        <translation>%1, die geografische Breite</translation>
    </message>
    <message>
        <source>%1, the longitude</source>
        <translation>%1, die geografische Länge</translation>
    </message>
    <message>
        <source>%1, the elevation</source>
        <translation>%1, die Höhe über dem Meer</translation>
    </message>
    <message>
        <source>%1, the species</source>
        <translation>%1, die Baumart</translation>
    </message>
    <message>
        <source>%1, the archive's code of the species</source>
        <translation>%1, der Code des Archivs für die Baumart</translation>
    </message>
    <message>
        <source>%1, the region of the site</source>
        <translation>%1, die Gegend des Standorts</translation>
    </message>
    <message>
        <source>%1, the collection's name</source>
        <translation>%1, der Name der Sammlung</translation>
    </message>
    <message>
        <source>%1, the species' common name</source>
        <translation>%1, der gebräuchliche Name der Baumart</translation>
    </message>
    <message>
        <source>this file exists already</source>
        <translation>diese Datei gibt es schon</translation>
    </message>
    <message>
        <source>this is no name of a file</source>
        <translation>das ist kein Name einer Datei</translation>
    </message>
    <message>
        <source>name a file to write to</source>
        <translation>nennen Sie eine Datei, in die geschrieben werden soll</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>das ist ein Ordner</translation>
    </message>
    <message>
        <source>this is no ordinary file</source>
        <translation>das ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>there is no folder %1</source>
        <translation>den Ordner %1 gibt es nicht</translation>
    </message>
    <message>
        <source>make it, or name another file</source>
        <translation>legen Sie ihn an oder nennen Sie eine andere Datei</translation>
    </message>
    <message>
        <source>the folder can't be written to: %1</source>
        <translation>in den Ordner kann nicht geschrieben werden: %1</translation>
    </message>
    <message>
        <source>name a file in another folder</source>
        <translation>nennen Sie eine Datei in einem anderen Ordner</translation>
    </message>
    <message>
        <source>it can't be written: %1</source>
        <translation>sie kann nicht geschrieben werden: %1</translation>
    </message>
    <message>
        <source>check that the folder is there and may be written to</source>
        <translation>prüfen Sie, ob es den Ordner gibt und ob man darin schreiben darf</translation>
    </message>
    <message>
        <source>check that the folder may be written to</source>
        <translation>prüfen Sie, ob man in dem Ordner schreiben darf</translation>
    </message>
    <message>
        <source>writing broke off: %1</source>
        <translation>das Schreiben brach ab: %1</translation>
    </message>
    <message>
        <source>writing broke off</source>
        <translation>das Schreiben brach ab</translation>
    </message>
    <message>
        <source>check the space left on the disk</source>
        <translation>prüfen Sie, wie viel Platz auf dem Datenträger ist</translation>
    </message>
    <message>
        <source>this is a scan that is open here</source>
        <translation>das ist ein Scan, der hier geöffnet ist</translation>
    </message>
    <message>
        <source>name another file</source>
        <translation>nennen Sie eine andere Datei</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>this is not an image that can be read</source>
        <translation>das ist kein Bild, das gelesen werden kann</translation>
    </message>
    <message>
        <source>give a TIFF, PNG or JPEG file</source>
        <translation>geben Sie eine TIFF-, PNG- oder JPEG-Datei</translation>
    </message>
    <message>
        <source>the file is cut short: it ends before its header does</source>
        <translation>die Datei ist abgeschnitten: sie endet vor dem Ende ihres Kopfes</translation>
    </message>
    <message>
        <source>the image data is damaged or cut short (%1)</source>
        <translation>die Bilddaten sind beschädigt oder abgeschnitten (%1)</translation>
    </message>
    <message>
        <source>the image data is damaged or cut short</source>
        <translation>die Bilddaten sind beschädigt oder abgeschnitten</translation>
    </message>
    <message>
        <source>scan again or take an undamaged copy</source>
        <translation>scannen Sie neu oder nehmen Sie eine unbeschädigte Kopie</translation>
    </message>
    <message>
        <source>its header is damaged, or of a kind that can't be read</source>
        <translation>ihr Kopf ist beschädigt oder von einer Art, die nicht gelesen werden kann</translation>
    </message>
    <message>
        <source>save it anew as a TIFF, PNG or JPEG file</source>
        <translation>speichern Sie sie neu als TIFF, PNG oder JPEG</translation>
    </message>
    <message>
        <source>ring boundaries would change their order along this path</source>
        <translation>auf diesem Pfad kämen Jahrringgrenzen in eine andere Reihenfolge</translation>
    </message>
    <message>
        <source>bend it less, so that it meets them one after the other</source>
        <translation>biegen Sie ihn weniger, sodass er sie der Reihe nach trifft</translation>
    </message>
    <message>
        <source>the ring boundary would pass its neighbour on the path</source>
        <translation>die Jahrringgrenze käme auf dem Pfad an ihrer Nachbarin vorbei</translation>
    </message>
    <message>
        <source>this path would meet none of the core's boundaries</source>
        <translation>dieser Pfad träfe keine der Jahrringgrenzen des Kerns</translation>
    </message>
    <message>
        <source>draw another path for the core (P)</source>
        <translation>zeichnen Sie einen anderen Pfad für den Kern (P)</translation>
    </message>
    <message>
        <source>a path needs two ends</source>
        <translation>ein Pfad braucht zwei Enden</translation>
    </message>
    <message>
        <source>no ring would be left on one of the scans</source>
        <translation>auf einem der Scans bliebe kein Jahrring</translation>
    </message>
    <message>
        <source>choose another one</source>
        <translation>wählen Sie eine andere</translation>
    </message>
    <message>
        <source>one of the two has no ring boundary</source>
        <translation>einer der beiden hat keine Jahrringgrenze</translation>
    </message>
    <message>
        <source>the two are read as different kinds of wood</source>
        <translation>die beiden sind als verschiedene Holzarten gelesen</translation>
    </message>
    <message>
        <source>findings are open: %1</source>
        <translation>Befunde sind offen: %1</translation>
    </message>
    <message>
        <source>answer them, on the bench or in the review</source>
        <translation>sie beantworten, auf dem Messplatz oder in der Prüfung</translation>
    </message>
    <message>
        <source>readings that no second person has passed: %1</source>
        <translation>Messungen, die keine zweite Person angenommen hat: %1</translation>
    </message>
    <message>
        <source>have them reviewed, or take --only passed</source>
        <translation>sie prüfen lassen, oder --only passed nehmen</translation>
    </message>
</context>
<context>
    <name>SiteWords</name>
    <message>
        <source>over 99 %</source>
        <translation>über 99 %</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>unter 1 %</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>noted as a finding</source>
        <translation>als Befund vermerkt</translation>
    </message>
    <message>
        <source>settled: it is not so</source>
        <translation>erledigt: es ist nicht so</translation>
    </message>
    <message>
        <source>settled: it can't be told</source>
        <translation>erledigt: nicht zu entscheiden</translation>
    </message>
    <message>
        <source>settled: accepted</source>
        <translation>erledigt: angenommen</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Annehmen</translation>
    </message>
    <message>
        <source>Put the boundary of %1 in</source>
        <translation>Die Grenze von %1 einfügen</translation>
    </message>
    <message>
        <source>Take the boundary in %1 out</source>
        <translation>Die Grenze in %1 wegnehmen</translation>
    </message>
    <message>
        <source>Mark %1 as locally absent</source>
        <translation>%1 als lokal ausfallend vermerken</translation>
    </message>
    <message>
        <source>All of it fits better %1 later: its last year is wrong, or a ring too many was counted at the bark</source>
        <translation>Alles passt %1 später besser: Ihr letztes Jahr ist falsch, oder an der Rinde wurde ein Jahrring zu viel gezählt</translation>
    </message>
    <message>
        <source>a year</source>
        <translation>ein Jahr</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 Jahre</translation>
    </message>
    <message>
        <source>All of it fits better %1 earlier: its last year is wrong, or a ring at the bark was overlooked</source>
        <translation>Alles passt %1 früher besser: Ihr letztes Jahr ist falsch, oder ein Jahrring an der Rinde wurde übersehen</translation>
    </message>
    <message>
        <source>No position has enough years in common with the others</source>
        <translation>Keine Lage hat genug Jahre mit den anderen gemeinsam</translation>
    </message>
    <message>
        <source>Fits best as %1 to %2, r %3; by chance alone so well in %4</source>
        <translation>Passt am besten als %1 bis %2, r %3; durch bloßen Zufall so gut in %4</translation>
    </message>
    <message>
        <source>%1 · %2 rings without years</source>
        <translation>%1 · %2 Jahrringe ohne Jahre</translation>
    </message>
    <message>
        <source>%1 · %2 to %3</source>
        <translation>%1 · %2 bis %3</translation>
    </message>
    <message>
        <source>%1 · r %2</source>
        <translation>%1 · r %2</translation>
    </message>
    <message>
        <source>%1, %2 sure</source>
        <translation>%1, zu %2 sicher</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Goes with the others as it is dated</source>
        <translation>Passt so, wie sie datiert ist, zu den anderen</translation>
    </message>
    <message>
        <source>Tells little: it hardly goes with the others, at no other years either</source>
        <translation>Sagt wenig: Sie passt kaum zu den anderen, auch in keinen anderen Jahren</translation>
    </message>
    <message>
        <source>Ring %1 is missing</source>
        <translation>Jahrring %1 fehlt</translation>
    </message>
    <message>
        <source>Ring %1 is counted twice</source>
        <translation>Jahrring %1 ist doppelt gezählt</translation>
    </message>
    <message>
        <source>The other cores are %1 sure of it.</source>
        <translation>Die anderen Kerne sind dessen zu %1 sicher.</translation>
    </message>
    <message>
        <source>%1 With 90 % it is this year and no other.</source>
        <translation>%1 Mit 90 % ist es dieses Jahr und kein anderes.</translation>
    </message>
    <message>
        <source>%1 With 90 % it lies between %2 and %3.</source>
        <translation>%1 Mit 90 % liegt es zwischen %2 und %3.</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>%1 trees</source>
        <translation>%1 Bäume</translation>
    </message>
    <message>
        <source>%1; a series goes with the others by r %2 on average</source>
        <translation>%1; eine Reihe passt im Mittel mit r %2 zu den anderen</translation>
    </message>
    <message>
        <source>Cores that are not read yet: %1</source>
        <translation>Kerne, die noch nicht gemessen sind: %1</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>Weggelassen: %1</translation>
    </message>
    <message>
        <source>Dating holds each series against the others: it takes at least three series with calendar years, of two trees or more. This project has %1.</source>
        <translation>Das Datieren hält jede Reihe gegen die anderen: Es braucht mindestens drei Reihen mit Kalenderjahren, von zwei oder mehr Bäumen. Dieses Projekt hat %1.</translation>
    </message>
    <message>
        <source>Without years: %1. Set the year of the outermost ring on the bench (Y).</source>
        <translation>Ohne Jahre: %1. Setzen Sie am Messplatz das Jahr des äußersten Jahrrings (Y).</translation>
    </message>
    <message>
        <source>Not read yet: %1. Measure them on the bench, or all at once with pithward measure.</source>
        <translation>Noch nicht gemessen: %1. Messen Sie sie am Messplatz, oder alle auf einmal mit pithward measure.</translation>
    </message>
    <message>
        <source>Add %1 to all of its years</source>
        <translation>Alle Jahre um %1 erhöhen</translation>
    </message>
    <message>
        <source>Take %1 off all of its years</source>
        <translation>Alle Jahre um %1 verringern</translation>
    </message>
</context>
<context>
    <name>Wording</name>
    <message>
        <source>locally absent</source>
        <translation>fällt lokal aus</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>Conifer</source>
        <translation>Nadelholz</translation>
    </message>
    <message>
        <source>Ring-porous</source>
        <translation>Ringporig</translation>
    </message>
    <message>
        <source>Diffuse-porous</source>
        <translation>Zerstreutporig</translation>
    </message>
    <message>
        <source>Complete ring</source>
        <translation>Vollständiger Jahrring</translation>
    </message>
    <message>
        <source>Unfinished ring</source>
        <translation>Unfertiger Jahrring</translation>
    </message>
    <message>
        <source>Outer wood lost</source>
        <translation>Äußeres Holz verloren</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>Possibly a false ring</source>
        <translation>Vielleicht ein Scheinring</translation>
    </message>
    <message>
        <source>Possibly overlooked</source>
        <translation>Vielleicht übersehen</translation>
    </message>
    <message>
        <source>Doubtful boundary</source>
        <translation>Zweifelhafte Grenze</translation>
    </message>
    <message>
        <source>Wood under the bark</source>
        <translation>Holz unter der Rinde</translation>
    </message>
    <message>
        <source>Bark end</source>
        <translation>Rindenende</translation>
    </message>
    <message>
        <source>Lost wood</source>
        <translation>Verlorenes Holz</translation>
    </message>
    <message>
        <source>Wedging ring</source>
        <translation>Auskeilender Jahrring</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Maßstab</translation>
    </message>
    <message>
        <source>Pith</source>
        <translation>Mark</translation>
    </message>
    <message>
        <source>Past the pith?</source>
        <translation>Über das Mark hinaus?</translation>
    </message>
    <message>
        <source>Kind of wood</source>
        <translation>Art des Holzes</translation>
    </message>
    <message>
        <source>Field sheet</source>
        <translation>Feldbogen</translation>
    </message>
    <message>
        <source>Slip against the site</source>
        <translation>Versatz gegen den Standort</translation>
    </message>
    <message>
        <source>the file's tag</source>
        <translation>Angabe der Datei</translation>
    </message>
    <message>
        <source>your word</source>
        <translation>Ihrer Angabe</translation>
    </message>
    <message>
        <source>the ruler</source>
        <translation>dem Lineal</translation>
    </message>
    <message>
        <source>%1 dpi, by %2</source>
        <translation>%1 dpi, nach %2</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1, ± %2 %</source>
        <translation>%1, ± %2 %</translation>
    </message>
    <message>
        <source>As you said</source>
        <translation>Wie Sie sagten</translation>
    </message>
    <message>
        <source>bark is seen</source>
        <translation>Rinde ist zu sehen</translation>
    </message>
    <message>
        <source>by latewood edges</source>
        <translation>nach den Spätholzkanten</translation>
    </message>
    <message>
        <source>by ring curvature</source>
        <translation>nach der Krümmung der Jahrringe</translation>
    </message>
    <message>
        <source>over 99</source>
        <translation>über 99</translation>
    </message>
    <message>
        <source>%1 % sure, %2</source>
        <translation>zu %1 % sicher, %2</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>cored %1</source>
        <translation>gebohrt %1</translation>
    </message>
    <message>
        <source>Site %1: %2</source>
        <translation>Standort %1: %2</translation>
    </message>
    <message>
        <source>Stem at breast height: %1 cm</source>
        <translation>Stamm in Brusthöhe: %1 cm</translation>
    </message>
    <message>
        <source>Bored from %1°</source>
        <translation>Gebohrt von %1°</translation>
    </message>
    <message>
        <source>by the curve of the rings</source>
        <translation>nach der Krümmung der Jahrringe</translation>
    </message>
    <message>
        <source>seen on the core</source>
        <translation>am Kern zu sehen</translation>
    </message>
    <message>
        <source>placed by hand</source>
        <translation>von Hand gesetzt</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 rings to the pith</source>
        <translation>%1 Jahrringe bis zum Mark</translation>
    </message>
    <message>
        <source>%1 mm (%2 to %3)</source>
        <translation>%1 mm (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 oder mehr</translation>
    </message>
    <message>
        <source>%1 mm (%2), %3 rings</source>
        <translation>%1 mm (%2), %3 Jahrringe</translation>
    </message>
    <message>
        <source>Ring %1</source>
        <translation>Jahrring %1</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Ring %1 from the bark: %2</source>
        <translation>Jahrring %1 von der Rinde: %2</translation>
    </message>
    <message>
        <source>%1, ring %2 from the bark: %3</source>
        <translation>%1, Jahrring %2 von der Rinde: %3</translation>
    </message>
</context>
<context>
    <name>pithward::bench::AgreementBand</name>
    <message>
        <source>%1 · no years</source>
        <translation>%1 · ohne Jahre</translation>
    </message>
    <message>
        <source>%1 · r %2</source>
        <translation>%1 · r %2</translation>
    </message>
</context>
<context>
    <name>pithward::bench::BenchControl</name>
    <message>
        <source>No scan found there. Choose TIFF, PNG or JPEG files.</source>
        <translation>Dort ist kein Scan. Wählen Sie Dateien im Format TIFF, PNG oder JPEG.</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Exporting</source>
        <translation>Ausgeben</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Geschrieben nach %1</translation>
    </message>
    <message>
        <source>The readings of a project stay. Draw a path (P) for a new one.</source>
        <translation>Die Messungen eines Projekts bleiben. Zeichnen Sie für eine neue einen Weg (P).</translation>
    </message>
    <message>
        <source>Finding and measuring cores</source>
        <translation>Kerne suchen und messen</translation>
    </message>
    <message>
        <source>No core was seen on this scan. Draw its path by hand (P).</source>
        <translation>Auf diesem Scan war kein Kern zu sehen. Zeichnen Sie seinen Weg von Hand (P).</translation>
    </message>
    <message>
        <source>This core goes on on another scan, and is not read again as a whole. Take that back first.</source>
        <translation>Dieser Kern geht auf einem anderen Scan weiter und wird nicht im Ganzen neu gemessen. Nehmen Sie das zuerst zurück.</translation>
    </message>
    <message>
        <source>Say the scan's resolution first: widths need it.</source>
        <translation>Geben Sie zuerst die Auflösung des Scans an: Breiten brauchen sie.</translation>
    </message>
    <message>
        <source>Measuring the path</source>
        <translation>Den Weg messen</translation>
    </message>
    <message>
        <source>Read the core again</source>
        <translation>Den Kern neu messen</translation>
    </message>
    <message>
        <source>The core was changed meanwhile, so the new reading was not taken. Try again.</source>
        <translation>Der Kern wurde inzwischen geändert, darum wurde die neue Messung nicht übernommen. Versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>What was drawn or changed by hand stays as it is. Undo its changes first to have it read anew.</source>
        <translation>Was von Hand gezeichnet oder geändert wurde, bleibt, wie es ist. Nehmen Sie die Änderungen zurück, damit es neu gelesen wird.</translation>
    </message>
</context>
<context>
    <name>pithward::bench::BreakDialog</name>
    <message>
        <source>Break</source>
        <translation>Bruch</translation>
    </message>
    <message>
        <source>Crack</source>
        <translation>Riss</translation>
    </message>
    <message>
        <source>Lost wood</source>
        <translation>Verlorenes Holz</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Art</translation>
    </message>
    <message>
        <source>&amp;Whole rings gone</source>
        <translation>&amp;Ganze Jahrringe verloren</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>Remove this break</source>
        <translation>Diesen Bruch entfernen</translation>
    </message>
    <message>
        <source>No wood is lost: its breadth is taken off the ring that it crosses.</source>
        <translation>Kein Holz ist verloren: Seine Breite wird von dem Jahrring abgezogen, den er kreuzt.</translation>
    </message>
    <message>
        <source>The rings that it touches get no width; years go on beyond it.</source>
        <translation>Die Jahrringe, die er berührt, erhalten keine Breite; jenseits gehen die Jahre weiter.</translation>
    </message>
    <message>
        <source>The series ends here, and the rings beyond it have no years, until the number is known.</source>
        <translation>Die Reihe endet hier, und die Jahrringe jenseits haben keine Jahre, bis die Zahl bekannt ist.</translation>
    </message>
</context>
<context>
    <name>pithward::bench::ChronologyBand</name>
    <message>
        <source>Mean of the site, with its 90 % interval</source>
        <translation>Mittel des Standorts mit seiner Spanne von 90 %</translation>
    </message>
    <message>
        <source>Series (shaded) and trees (dashed)</source>
        <translation>Reihen (schattiert) und Bäume (gestrichelt)</translation>
    </message>
    <message>
        <source>EPS, the signal that the trees share; dotted: 0.85, the usual least</source>
        <translation>EPS, das gemeinsame Signal der Bäume; gepunktet: 0,85, das übliche Mindestmaß</translation>
    </message>
</context>
<context>
    <name>pithward::bench::ComparisonView</name>
    <message>
        <source>Reading %1, %2</source>
        <translation>Messung %1, %2</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1, accepted</source>
        <translation>%1, geltend</translation>
    </message>
    <message>
        <source>Rings that both have: %1 (%2 % of all).</source>
        <translation>Jahrringe, die beide haben: %1 (%2 % von allen).</translation>
    </message>
    <message>
        <source>Of these with another year: %1.</source>
        <translation>Davon mit anderem Jahr: %1.</translation>
    </message>
    <message>
        <source>Widths, the second's less the first's: %1, standard deviation %2.</source>
        <translation>Breiten, die der zweiten weniger die der ersten: %1, Standardabweichung %2.</translation>
    </message>
    <message>
        <source>One reading's width alone, if both are as good: ± %1.</source>
        <translation>Breite aus einer Messung allein, wenn beide gleich gut sind: ± %1.</translation>
    </message>
    <message>
        <source>Readings of %1</source>
        <translation>Messungen von %1</translation>
    </message>
    <message>
        <source>First reading, shown above</source>
        <translation>Erste Messung, oben gezeigt</translation>
    </message>
    <message>
        <source>Second reading, shown below</source>
        <translation>Zweite Messung, unten gezeigt</translation>
    </message>
    <message>
        <source>How far the readings agree</source>
        <translation>Wie weit die Messungen übereinstimmen</translation>
    </message>
    <message>
        <source>Boundaries that only one reading has</source>
        <translation>Grenzen, die nur eine Messung hat</translation>
    </message>
    <message>
        <source>Only in reading</source>
        <translation>Nur in Messung</translation>
    </message>
    <message>
        <source>Ring</source>
        <translation>Jahrring</translation>
    </message>
    <message>
        <source>From the bark</source>
        <translation>Von der Rinde</translation>
    </message>
</context>
<context>
    <name>pithward::bench::CoreDetails</name>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>This core</source>
        <translation>Dieser Kern</translation>
    </message>
    <message>
        <source>Its tree</source>
        <translation>Sein Baum</translation>
    </message>
    <message>
        <source>The site</source>
        <translation>Der Standort</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Zurücknehmen: %1</translation>
    </message>
    <message>
        <source>%1, tree %2, %3</source>
        <translation>%1, Baum %2, %3</translation>
    </message>
    <message>
        <source>%1, tree %2, %3. From %4; a project lets you change it.</source>
        <translation>%1, Baum %2, %3. Aus %4; in einem Projekt lässt es sich ändern.</translation>
    </message>
    <message>
        <source>No field sheet tells of this scan.</source>
        <translation>Kein Feldbogen sagt etwas von diesem Scan.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Other columns of the field sheet</source>
        <translation>Weitere Spalten des Feldbogens</translation>
    </message>
    <message>
        <source>%1 of %2 from %3 to %4</source>
        <translation>%1 von %2 von %3 auf %4</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Ändern: %1</translation>
    </message>
</context>
<context>
    <name>pithward::bench::CoreEditor</name>
    <message>
        <source>marked as a false ring</source>
        <translation>als Scheinring vermerkt</translation>
    </message>
    <message>
        <source>No candidate that was turned down lies there. Point at its struck tips.</source>
        <translation>Dort liegt nichts Verworfenes. Zeigen Sie auf die durchgestrichenen Spitzen.</translation>
    </message>
    <message>
        <source>No ring is marked as locally absent at this boundary.</source>
        <translation>An dieser Grenze ist kein Jahrring als lokal ausfallend vermerkt.</translation>
    </message>
    <message>
        <source>Undone</source>
        <translation>Rückgängig gemacht</translation>
    </message>
    <message>
        <source>Done again</source>
        <translation>Wiederhergestellt</translation>
    </message>
    <message>
        <source>Point at the wood of the present core to add a boundary there.</source>
        <translation>Zeigen Sie auf das Holz des jetzigen Kerns, um dort eine Grenze einzufügen.</translation>
    </message>
    <message>
        <source>The wood shows no boundary near there. Shift+A, or Shift and a double click, adds one freely.</source>
        <translation>Das Holz zeigt dort keine Grenze. Umschalt+A, oder Umschalt und Doppelklick, fügt frei eine ein.</translation>
    </message>
    <message>
        <source>A boundary stays on its path. Let it go nearer to the wood.</source>
        <translation>Eine Grenze bleibt auf ihrem Weg. Lassen Sie sie näher am Holz los.</translation>
    </message>
    <message>
        <source>Point at both edges of the break on the wood of the present core.</source>
        <translation>Zeigen Sie auf beide Ränder des Bruchs am Holz des jetzigen Kerns.</translation>
    </message>
</context>
<context>
    <name>pithward::bench::CoreList</name>
    <message>
        <source>Scans and cores</source>
        <translation>Scans und Kerne</translation>
    </message>
    <message>
        <source>part of another</source>
        <translation>Teil eines anderen</translation>
    </message>
    <message numerus="yes">
        <source>%n rings</source>
        <translation>
            <numerusform>%n Jahrring</numerusform>
            <numerusform>%n Jahrringe</numerusform>
        </translation>
    </message>
    <message>
        <source>Core %1</source>
        <translation>Kern %1</translation>
    </message>
    <message>
        <source>no core</source>
        <translation>kein Kern</translation>
    </message>
</context>
<context>
    <name>pithward::bench::Errand</name>
    <message>
        <source>%1 can't be started; install Pithward again.</source>
        <translation>%1 lässt sich nicht starten; Pithward neu installieren.</translation>
    </message>
    <message>
        <source>The work beside the window ended before it was done; please report this.</source>
        <translation>Die Arbeit neben dem Fenster endete, bevor sie getan war; bitte melden.</translation>
    </message>
</context>
<context>
    <name>pithward::bench::ExportDialog</name>
    <message>
        <source>Export</source>
        <translation>Ausgabe</translation>
    </message>
    <message>
        <source>What will be written</source>
        <translation>Was geschrieben wird</translation>
    </message>
    <message>
        <source>The picture that will be written</source>
        <translation>Das Bild, das geschrieben wird</translation>
    </message>
    <message>
        <source>File to write</source>
        <translation>Zu schreibende Datei</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>&amp;Form</source>
        <translation>&amp;Form</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>&amp;Nach</translation>
    </message>
    <message>
        <source>Preparing…</source>
        <translation>Wird vorbereitet…</translation>
    </message>
    <message>
        <source>
… and so on</source>
        <translation>
… und so weiter</translation>
    </message>
    <message>
        <source>There is a file of this name. Saving writes over it.</source>
        <translation>Es gibt eine Datei dieses Namens. Speichern überschreibt sie.</translation>
    </message>
    <message>
        <source>Export to</source>
        <translation>Ausgeben nach</translation>
    </message>
</context>
<context>
    <name>pithward::bench::FindingsList</name>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Proposal: %1</source>
        <translation>Vorschlag: %1</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>zurückgegeben</translation>
    </message>
    <message>
        <source>Comment: %1</source>
        <translation>Bemerkung: %1</translation>
    </message>
</context>
<context>
    <name>pithward::bench::Handbook</name>
    <message>
        <source>Handbook</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>&amp;Contents</source>
        <translation>&amp;Inhalt</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
</context>
<context>
    <name>pithward::bench::HistoryView</name>
    <message>
        <source>&amp;Bring this back</source>
        <translation>Dies &amp;zurückbringen</translation>
    </message>
    <message>
        <source>History of %1</source>
        <translation>Verlauf von %1</translation>
    </message>
    <message>
        <source>What was done to this core</source>
        <translation>Was an diesem Kern getan wurde</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Make the reading again what it was then; a new edit, which can be undone</source>
        <translation>Die Messung wieder zu dem machen, was sie damals war; eine neue Änderung, die sich rückgängig machen lässt</translation>
    </message>
    <message>
        <source>Reading %1: %2</source>
        <translation>Messung %1: %2</translation>
    </message>
    <message>
        <source>%1, by Pithward %2</source>
        <translation>%1, mit Pithward %2</translation>
    </message>
    <message>
        <source>This changed no reading.</source>
        <translation>Dies hat keine Messung geändert.</translation>
    </message>
    <message>
        <source>%1: %2. %3.</source>
        <translation>%1: %2. %3.</translation>
    </message>
    <message>
        <source>As it is now</source>
        <translation>Wie sie jetzt ist</translation>
    </message>
    <message>
        <source>As it was after this</source>
        <translation>Wie sie danach war</translation>
    </message>
    <message>
        <source>Open findings: %1</source>
        <translation>Offene Befunde: %1</translation>
    </message>
    <message>
        <source>Bring back the reading of %1</source>
        <translation>Die Messung von %1 zurückbringen</translation>
    </message>
</context>
<context>
    <name>pithward::bench::JoinDialog</name>
    <message>
        <source>Go on on another scan</source>
        <translation>Auf einem anderen Scan weiter</translation>
    </message>
    <message numerus="yes">
        <source>%1, core %2: %n rings</source>
        <translation>
            <numerusform>%1, Kern %2: %n Jahrring</numerusform>
            <numerusform>%1, Kern %2: %n Jahrringe</numerusform>
        </translation>
    </message>
    <message>
        <source>Both show the boundary in hand, of %1</source>
        <translation>Beide zeigen die Grenze in der Hand, von %1</translation>
    </message>
    <message>
        <source>At a crack, no wood lost</source>
        <translation>An einem Riss, kein Holz verloren</translation>
    </message>
    <message>
        <source>Wood is lost between them</source>
        <translation>Dazwischen ist Holz verloren</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>&amp;Next part</source>
        <translation>&amp;Nächster Teil</translation>
    </message>
    <message>
        <source>&amp;How they meet</source>
        <translation>&amp;Wie sie sich treffen</translation>
    </message>
    <message>
        <source>&amp;Whole rings gone</source>
        <translation>&amp;Ganze Jahrringe verloren</translation>
    </message>
    <message>
        <source>No other scan with a core is on the bench. Open the scan on which this core goes on.</source>
        <translation>Kein anderer Scan mit einem Kern liegt auf dem Messplatz. Öffnen Sie den Scan, auf dem dieser Kern weitergeht.</translation>
    </message>
    <message>
        <source>The other scan is shown next: click the same boundary there. What lies outside it there, and inside it here, is left out; no ring is lost or gained.</source>
        <translation>Als Nächstes wird der andere Scan gezeigt: Klicken Sie dort dieselbe Grenze an. Was dort außerhalb und hier innerhalb von ihr liegt, bleibt weg; kein Jahrring geht verloren oder kommt dazu.</translation>
    </message>
    <message>
        <source>The end of the path here meets the start of the path there. A ring that goes over the crack is measured in both parts.</source>
        <translation>Das Ende des Weges hier trifft den Anfang des Weges dort. Ein Jahrring, der über den Riss geht, wird in beiden Teilen gemessen.</translation>
    </message>
    <message>
        <source>The series ends here, and the rings there have no years, until the number is known.</source>
        <translation>Die Reihe endet hier, und die Jahrringe dort haben keine Jahre, bis die Zahl bekannt ist.</translation>
    </message>
    <message>
        <source>The rings that the gap touches get no width; years go on beyond it.</source>
        <translation>Die Jahrringe, die die Lücke berührt, erhalten keine Breite; jenseits gehen die Jahre weiter.</translation>
    </message>
</context>
<context>
    <name>pithward::bench::KeySheet</name>
    <message>
        <source>Keys and mouse</source>
        <translation>Tasten und Maus</translation>
    </message>
    <message>
        <source>Keys and what the mouse does</source>
        <translation>Tasten, und was die Maus tut</translation>
    </message>
    <message>
        <source>On the scan</source>
        <translation>Auf dem Scan</translation>
    </message>
</context>
<context>
    <name>pithward::bench::MainWindow</name>
    <message>
        <source>Break: click one of its edges on the path. Escape gives up.</source>
        <translation>Bruch: einen seiner Ränder auf dem Weg anklicken. Esc gibt auf.</translation>
    </message>
    <message>
        <source>Break: click its other edge. Backspace takes the first edge back, Escape gives up.</source>
        <translation>Bruch: den anderen Rand anklicken. Rücktaste nimmt den ersten zurück, Esc gibt auf.</translation>
    </message>
    <message>
        <source>Point at a break first: at the wood between its two edges.</source>
        <translation>Zeigen Sie zuerst auf einen Bruch: auf das Holz zwischen seinen Rändern.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Note on this boundary:</source>
        <translation>Notiz zu dieser Grenze:</translation>
    </message>
    <message>
        <source>the innermost ring</source>
        <translation>des innersten Jahrrings</translation>
    </message>
    <message>
        <source>Go on: click the boundary of %1 here too. Escape gives up.</source>
        <translation>Weiter: auch hier die Grenze von %1 anklicken. Esc gibt auf.</translation>
    </message>
    <message>
        <source>No boundary lies there, so nothing was joined. Try again from the outer part of the core.</source>
        <translation>Dort liegt keine Grenze, also wurde nichts verbunden. Versuchen Sie es vom äußeren Teil des Kerns noch einmal.</translation>
    </message>
    <message>
        <source>A project holds scans of its own folder. Put %1 there, open it again, and join then.</source>
        <translation>Ein Projekt enthält Scans seines eigenen Ordners. Legen Sie %1 dorthin, öffnen Sie es wieder und verbinden Sie dann.</translation>
    </message>
    <message>
        <source>The core goes on on %1</source>
        <translation>Der Kern geht auf %1 weiter</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>This part of the core lies on %1, which is not on the bench. Open it (Ctrl+O).</source>
        <translation>Dieser Teil des Kerns liegt auf %1, das nicht auf dem Messplatz ist. Öffnen Sie es (Strg+O).</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <source>Project</source>
        <translation>Projekt</translation>
    </message>
    <message>
        <source>Field data</source>
        <translation>Felddaten</translation>
    </message>
    <message>
        <source>Cores</source>
        <translation>Kerne</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Pith</source>
        <translation>Mark</translation>
    </message>
    <message>
        <source>What is written to the project</source>
        <translation>Was in das Projekt geschrieben ist</translation>
    </message>
    <message>
        <source>What is under the cursor</source>
        <translation>Was unter dem Mauszeiger ist</translation>
    </message>
    <message>
        <source>Scale of the view</source>
        <translation>Maßstab der Ansicht</translation>
    </message>
    <message>
        <source>%1 – Pithward</source>
        <translation>%1 – Pithward</translation>
    </message>
    <message>
        <source>Pithward</source>
        <translation>Pithward</translation>
    </message>
    <message>
        <source>Open scans</source>
        <translation>Scans öffnen</translation>
    </message>
    <message>
        <source>Scans (%1)</source>
        <translation>Scans (%1)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Geschrieben nach %1</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Point at the place on the wood first.</source>
        <translation>Zeigen Sie zuerst auf die Stelle am Holz.</translation>
    </message>
    <message>
        <source>Point at the wood of the present core to bend its path there.</source>
        <translation>Zeigen Sie auf das Holz des jetzigen Kerns, um dort seinen Weg zu knicken.</translation>
    </message>
    <message>
        <source>Point at a bend of the path first: a short tick across it.</source>
        <translation>Zeigen Sie zuerst auf einen Knick des Weges: einen kurzen Strich quer darüber.</translation>
    </message>
    <message>
        <source>%1, %2 – Pithward</source>
        <translation>%1, %2 – Pithward</translation>
    </message>
    <message>
        <source>Only to be looked at</source>
        <translation>Nur zum Ansehen</translation>
    </message>
    <message numerus="yes">
        <source>Writing %n…</source>
        <translation>
            <numerusform>%n wird geschrieben…</numerusform>
            <numerusform>%n werden geschrieben…</numerusform>
        </translation>
    </message>
    <message>
        <source>All is written</source>
        <translation>Alles ist geschrieben</translation>
    </message>
    <message>
        <source>The window closes when the last edits are written.</source>
        <translation>Das Fenster schließt, wenn die letzten Änderungen geschrieben sind.</translation>
    </message>
    <message>
        <source>Readings are marked, accepted and passed in a project. Open one, or make one with pithward create.</source>
        <translation>Fertig gemeldet, gelten gelassen und angenommen werden Messungen in einem Projekt. Öffnen Sie eines oder legen Sie mit pithward create eines an.</translation>
    </message>
    <message>
        <source>Marked as done: it waits for a second person</source>
        <translation>Fertig gemeldet: Sie wartet auf eine zweite Person</translation>
    </message>
    <message>
        <source>No core waits for its analyst</source>
        <translation>Kein Kern wartet auf die Bearbeitung</translation>
    </message>
    <message>
        <source>Open a project</source>
        <translation>Ein Projekt öffnen</translation>
    </message>
    <message>
        <source>Projects (*.pithward)</source>
        <translation>Projekte (*.pithward)</translation>
    </message>
    <message>
        <source>This core has one reading. Draw a path on it (P), or run pithward measure with its name, for another.</source>
        <translation>Dieser Kern hat eine Messung. Für eine weitere zeichnen Sie einen Weg darauf (P) oder rufen Sie pithward measure mit seinem Namen auf.</translation>
    </message>
    <message>
        <source>Ruler: click one end of its marks, in the middle of their length. Escape gives up.</source>
        <translation>Lineal: ein Ende seiner Striche anklicken, in der Mitte ihrer Länge. Esc gibt auf.</translation>
    </message>
    <message>
        <source>Ruler: click the other end. Backspace takes the first one back, Escape gives up.</source>
        <translation>Lineal: das andere Ende anklicken. Rücktaste nimmt das erste zurück, Esc gibt auf.</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>The window speaks this language when the program is started again.</source>
        <translation>Das Fenster spricht diese Sprache, wenn das Programm wieder gestartet wird.</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Standort</translation>
    </message>
    <message>
        <source>A scan outside of the project's folder</source>
        <translation>Ein Scan außerhalb des Projektordners</translation>
    </message>
    <message>
        <source>The project names the scan %1, which is outside of its folder:

%2</source>
        <translation>Das Projekt nennt den Scan %1, der außerhalb seines Ordners liegt:

%2</translation>
    </message>
    <message>
        <source>Read this file? Say yes only if you know it. The answer holds while this window is open.</source>
        <translation>Diese Datei lesen? Sagen Sie nur Ja, wenn Sie sie kennen. Die Antwort gilt, solange dieses Fenster offen ist.</translation>
    </message>
    <message>
        <source>The scan at %1 was not read.</source>
        <translation>Der Scan bei %1 wurde nicht gelesen.</translation>
    </message>
    <message>
        <source>Making the project</source>
        <translation>Projekt wird angelegt</translation>
    </message>
    <message>
        <source>Measuring every core that has no reading</source>
        <translation>Jeder Kern ohne Messung wird gemessen</translation>
    </message>
    <message>
        <source>Every core that could be was measured</source>
        <translation>Jeder Kern, bei dem es ging, ist gemessen</translation>
    </message>
    <message>
        <source>Writing the report</source>
        <translation>Bericht wird geschrieben</translation>
    </message>
    <message>
        <source>The report is in %1</source>
        <translation>Der Bericht ist in %1</translation>
    </message>
    <message>
        <source>Write the archive package</source>
        <translation>Archivpaket schreiben</translation>
    </message>
    <message>
        <source>Archive package (*.zip)</source>
        <translation>Archivpaket (*.zip)</translation>
    </message>
    <message>
        <source>Writing the archive package</source>
        <translation>Archivpaket wird geschrieben</translation>
    </message>
    <message>
        <source>The archive package is in %1</source>
        <translation>Das Archivpaket ist in %1</translation>
    </message>
    <message>
        <source>Close without exporting?</source>
        <translation>Schließen, ohne zu exportieren?</translation>
    </message>
    <message>
        <source>What you changed here is in no file yet: %1</source>
        <translation>Was Sie hier geändert haben, steht noch in keiner Datei: %1</translation>
    </message>
    <message>
        <source>Closing loses it. Export first (Ctrl+J writes everything that was read), or make a project, which keeps every edit.</source>
        <translation>Beim Schließen geht es verloren. Exportieren Sie erst (Strg+J schreibt alles, was gelesen wurde), oder legen Sie ein Projekt an, das jede Änderung behält.</translation>
    </message>
    <message>
        <source>&amp;Stay</source>
        <translation>&amp;Bleiben</translation>
    </message>
    <message>
        <source>&amp;Close and lose it</source>
        <translation>&amp;Schließen und verlieren</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
</context>
<context>
    <name>pithward::bench::MessageBar</name>
    <message>
        <source>Message</source>
        <translation>Meldung</translation>
    </message>
    <message>
        <source>Close this message</source>
        <translation>Diese Meldung schließen</translation>
    </message>
    <message>
        <source>%1 more messages: rest the mouse here to read them.</source>
        <translation>%1 weitere Meldungen: zum Lesen den Mauszeiger hier ruhen lassen.</translation>
    </message>
</context>
<context>
    <name>pithward::bench::MissingList</name>
    <message>
        <source>What the archive package lacks</source>
        <translation>Was dem Archivpaket fehlt</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Fehlt</translation>
    </message>
    <message>
        <source>How much it matters</source>
        <translation>Wie wichtig es ist</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nötig</translation>
    </message>
    <message>
        <source>customary</source>
        <translation>üblich</translation>
    </message>
    <message>
        <source>The package is written. Needed is what every published study has that the program was checked against; the package's README tells the same list.</source>
        <translation>Das Paket ist geschrieben. Nötig ist, was jede veröffentlichte Studie hat, an der das Programm geprüft wurde; die README des Pakets nennt dieselbe Liste.</translation>
    </message>
    <message>
        <source>&amp;Fill it in</source>
        <translation>&amp;Ausfüllen</translation>
    </message>
    <message>
        <source>C&amp;opy the list</source>
        <translation>Liste &amp;kopieren</translation>
    </message>
</context>
<context>
    <name>pithward::bench::NeighbourYears</name>
    <message>
        <source>Widths of the neighbouring years</source>
        <translation>Breiten der Nachbarjahre</translation>
    </message>
</context>
<context>
    <name>pithward::bench::NewProjectDialog</name>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>New project</source>
        <translation>Neues Projekt</translation>
    </message>
    <message>
        <source>A project keeps the field sheet's cores, their readings and who did what, in one file beside the scans. Scans are found by the column “scan” of the sheet, or by the name of the core.</source>
        <translation>Ein Projekt hält die Kerne des Feldbogens, ihre Messungen und wer was getan hat, in einer Datei bei den Scans. Scans werden durch die Spalte „scan“ des Bogens gefunden oder durch den Namen des Kerns.</translation>
    </message>
    <message>
        <source>&amp;Field sheet (CSV)</source>
        <translation>&amp;Feldbogen (CSV)</translation>
    </message>
    <message>
        <source>Choose the field sheet</source>
        <translation>Feldbogen wählen</translation>
    </message>
    <message>
        <source>Tables (*.csv);;All files (*)</source>
        <translation>Tabellen (*.csv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Folder of the &amp;scans</source>
        <translation>Ordner der &amp;Scans</translation>
    </message>
    <message>
        <source>Choose the folder of the scans</source>
        <translation>Ordner der Scans wählen</translation>
    </message>
    <message>
        <source>&amp;Project</source>
        <translation>&amp;Projekt</translation>
    </message>
    <message>
        <source>Name the project</source>
        <translation>Projekt benennen</translation>
    </message>
    <message>
        <source>Projects (*.pithward)</source>
        <translation>Projekte (*.pithward)</translation>
    </message>
    <message>
        <source>&amp;Make the project</source>
        <translation>Projekt &amp;anlegen</translation>
    </message>
</context>
<context>
    <name>pithward::bench::PathEditor</name>
    <message>
        <source>Move a bend of the path</source>
        <translation>Einen Knick des Weges verschieben</translation>
    </message>
    <message>
        <source>Bend the path</source>
        <translation>Den Weg knicken</translation>
    </message>
    <message>
        <source>Take a bend away</source>
        <translation>Einen Knick wegnehmen</translation>
    </message>
    <message>
        <source>Extend the path</source>
        <translation>Den Weg verlängern</translation>
    </message>
    <message>
        <source>The path steps aside along this boundary</source>
        <translation>Der Weg weicht entlang dieser Grenze aus</translation>
    </message>
    <message>
        <source>Show the scan on which the path ends, with its resolution, to make the path longer.</source>
        <translation>Zeigen Sie den Scan, auf dem der Weg endet, mit seiner Auflösung, um den Weg zu verlängern.</translation>
    </message>
    <message>
        <source>Reading the rest of the path</source>
        <translation>Den Rest des Weges messen</translation>
    </message>
    <message>
        <source>The core was changed meanwhile, so the path stays as it was. Try again.</source>
        <translation>Der Kern wurde inzwischen geändert, darum bleibt der Weg, wie er war. Versuchen Sie es noch einmal.</translation>
    </message>
</context>
<context>
    <name>pithward::bench::PersonDialog</name>
    <message>
        <source>technician</source>
        <translation>Technik</translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation>Aufsicht</translation>
    </message>
    <message>
        <source>Who works here</source>
        <translation>Wer hier arbeitet</translation>
    </message>
    <message>
        <source>As the history shall tell it. These are entries, no locks: who can write to the file can write under any name.</source>
        <translation>Wie der Verlauf es nennen soll. Es sind Einträge, keine Schlösser: Wer in die Datei schreiben kann, kann es unter jedem Namen.</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Role</source>
        <translation>&amp;Rolle</translation>
    </message>
</context>
<context>
    <name>pithward::bench::PithKeeper</name>
    <message>
        <source>Place the pith by hand</source>
        <translation>Das Mark von Hand setzen</translation>
    </message>
    <message>
        <source>A straight ring has no centre. Bend its arc to one side.</source>
        <translation>Ein gerader Jahrring hat keine Mitte. Biegen Sie seinen Bogen zu einer Seite.</translation>
    </message>
    <message>
        <source>Judge the pith by the rings</source>
        <translation>Das Mark nach den Jahrringen beurteilen</translation>
    </message>
    <message>
        <source>The core was changed meanwhile, so the pith stays as it was. Try again.</source>
        <translation>Der Kern wurde inzwischen geändert, darum bleibt das Mark, wie es war. Versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>Judge the pith</source>
        <translation>Das Mark beurteilen</translation>
    </message>
</context>
<context>
    <name>pithward::bench::PithPanel</name>
    <message>
        <source>Rings to the pith</source>
        <translation>Jahrringe bis zum Mark</translation>
    </message>
    <message>
        <source>Distance to the pith</source>
        <translation>Abstand zum Mark</translation>
    </message>
    <message>
        <source>Year of the pith</source>
        <translation>Jahr des Marks</translation>
    </message>
    <message>
        <source>Other methods</source>
        <translation>Andere Verfahren</translation>
    </message>
    <message>
        <source>Rings to it</source>
        <translation>Ringe bis dort</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Its year</source>
        <translation>Sein Jahr</translation>
    </message>
    <message>
        <source>Intervals are 90 %. The year is that at the height of the core.</source>
        <translation>Spannen sind 90 %. Das Jahr ist das in der Höhe des Kerns.</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>none, it is on the core</source>
        <translation>keine, es ist am Kern</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>none, it is on the core (at most %1)</source>
        <translation>keine, es liegt auf dem Kern (höchstens %1)</translation>
    </message>
</context>
<context>
    <name>pithward::bench::ProgressLine</name>
    <message numerus="yes">
        <source>about %n s left</source>
        <translation>
            <numerusform>noch etwa %n s</numerusform>
            <numerusform>noch etwa %n s</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n min left</source>
        <translation>
            <numerusform>noch etwa %n min</numerusform>
            <numerusform>noch etwa %n min</numerusform>
        </translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
</context>
<context>
    <name>pithward::bench::ProgressModel</name>
    <message>
        <source>Picture of the core %1</source>
        <translation>Bild des Kerns %1</translation>
    </message>
    <message>
        <source>Core</source>
        <translation>Kern</translation>
    </message>
    <message>
        <source>Tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>Against it</source>
        <translation>Gegen ihn</translation>
    </message>
    <message>
        <source>What is next</source>
        <translation>Was als Nächstes kommt</translation>
    </message>
</context>
<context>
    <name>pithward::bench::ProgressPage</name>
    <message>
        <source>Dating the site…</source>
        <translation>Standort wird datiert…</translation>
    </message>
    <message>
        <source>%1 (Return)</source>
        <translation>%1 (Eingabe)</translation>
    </message>
    <message>
        <source>See it on the bench</source>
        <translation>Auf der Werkbank ansehen</translation>
    </message>
    <message>
        <source>Re&amp;versed</source>
        <translation>&amp;Umgekehrt</translation>
    </message>
    <message>
        <source>This project has no cores. Make one from a field sheet with File, New project.</source>
        <translation>Dieses Projekt hat keine Kerne. Eines aus einem Feldbogen anlegen mit Datei, Neues Projekt.</translation>
    </message>
    <message>
        <source>What is next for the site</source>
        <translation>Was am Standort als Nächstes kommt</translation>
    </message>
    <message>
        <source>Field sheet</source>
        <translation>Feldbogen</translation>
    </message>
    <message>
        <source>What the cores are sorted by</source>
        <translation>Wonach die Kerne sortiert sind</translation>
    </message>
    <message>
        <source>S&amp;orted by</source>
        <translation>&amp;Sortiert nach</translation>
    </message>
    <message>
        <source>Cores of the project and how far each is</source>
        <translation>Kerne des Projekts und wie weit jeder ist</translation>
    </message>
    <message>
        <source>What stands against the core</source>
        <translation>Was gegen den Kern steht</translation>
    </message>
</context>
<context>
    <name>pithward::bench::ProjectDesk</name>
    <message>
        <source>Opening</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>The scan %1 was moved: the same bytes are in %2</source>
        <translation>Der Scan %1 wurde verschoben: Dieselben Bytes sind in %2</translation>
    </message>
    <message>
        <source>A reading of %1 can't be measured, and is not shown.</source>
        <translation>Eine Messung von %1 lässt sich nicht ausmessen und wird nicht gezeigt.</translation>
    </message>
    <message>
        <source>%1 has no reading, and the project can't be written to.</source>
        <translation>%1 hat keine Messung, und in das Projekt lässt sich nicht schreiben.</translation>
    </message>
    <message numerus="yes">
        <source>%n cores are on this scan. Draw the path of %1 (P).</source>
        <translation>
            <numerusform>%n Kern ist auf diesem Scan. Zeichnen Sie den Weg von %1 (P).</numerusform>
            <numerusform>%n Kerne sind auf diesem Scan. Zeichnen Sie den Weg von %1 (P).</numerusform>
        </translation>
    </message>
    <message>
        <source>Propose a reading</source>
        <translation>Eine Messung vorschlagen</translation>
    </message>
    <message>
        <source>Taken back, since it could not be written: %1. %2</source>
        <translation>Zurückgenommen, da es sich nicht schreiben ließ: %1. %2</translation>
    </message>
    <message>
        <source>Several cores are on this scan. Measure all cores (Ctrl+Shift+M) reads each of them.</source>
        <translation>Auf diesem Scan liegen mehrere Kerne. Alle Kerne messen (Strg+Umschalt+M) liest jeden von ihnen.</translation>
    </message>
</context>
<context>
    <name>pithward::bench::ProjectList</name>
    <message numerus="yes">
        <source>%n open</source>
        <translation>
            <numerusform>%n offen</numerusform>
            <numerusform>%n offen</numerusform>
        </translation>
    </message>
    <message>
        <source>Cores of the project</source>
        <translation>Kerne des Projekts</translation>
    </message>
    <message>
        <source>Core</source>
        <translation>Kern</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht gemessen</translation>
    </message>
</context>
<context>
    <name>pithward::bench::ReadingPanel</name>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Year in which the outermost measured ring began to grow; empty when not known (Y)</source>
        <translation>Jahr, in dem der äußerste gemessene Jahrring zu wachsen begann; leer, wenn nicht bekannt (Y)</translation>
    </message>
    <message>
        <source>Choosing another type reads the core again</source>
        <translation>Eine andere Art zu wählen misst den Kern neu</translation>
    </message>
    <message>
        <source>What the wood under the bark is; choosing reads the core again</source>
        <translation>Was das Holz unter der Rinde ist; zu wählen misst den Kern neu</translation>
    </message>
    <message>
        <source>&amp;Year of ring 1</source>
        <translation>&amp;Jahr von Ring 1</translation>
    </message>
    <message>
        <source>&amp;Wood</source>
        <translation>&amp;Holz</translation>
    </message>
    <message>
        <source>&amp;Under the bark</source>
        <translation>&amp;Unter der Rinde</translation>
    </message>
    <message>
        <source>Rings</source>
        <translation>Jahrringe</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Mean width</source>
        <translation>Mittlere Breite</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Maßstab</translation>
    </message>
    <message>
        <source>Bark end</source>
        <translation>Rindenende</translation>
    </message>
    <message>
        <source>Field sheet</source>
        <translation>Feldbogen</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Shift+D tells who says what of the scale</source>
        <translation>Umschalt+D sagt, wer was über den Maßstab sagt</translation>
    </message>
    <message>
        <source>none beside the scan</source>
        <translation>keiner beim Scan</translation>
    </message>
    <message>
        <source>%1
From %2</source>
        <translation>%1
Aus %2</translation>
    </message>
    <message>
        <source>only in a project</source>
        <translation>nur in einem Projekt</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>, %n locally absent</source>
        <translation>
            <numerusform>, %n fällt lokal aus</numerusform>
            <numerusform>, %n fallen lokal aus</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>pithward::bench::ReportDialog</name>
    <message>
        <source>years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>standard deviation</source>
        <translation>Standardabweichung</translation>
    </message>
    <message>
        <source>Write the report</source>
        <translation>Bericht schreiben</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>A name that ends in .pdf or .html. With monthly climate values, a row a year or a row a month, each chronology is held against months and seasons; with the years to the height of coring, ages are told for the whole tree.</source>
        <translation>Ein Name, der auf .pdf oder .html endet. Mit monatlichen Klimawerten, eine Zeile je Jahr oder je Monat, wird jede Chronologie mit Monaten und Jahreszeiten verglichen; mit den Jahren bis zur Entnahmehöhe werden Alter des ganzen Baums genannt.</translation>
    </message>
    <message>
        <source>&amp;Report</source>
        <translation>&amp;Bericht</translation>
    </message>
    <message>
        <source>&amp;Climate series (CSV)</source>
        <translation>&amp;Klimareihe (CSV)</translation>
    </message>
    <message>
        <source>&amp;Growing up to the cores</source>
        <translation>&amp;Wachsen bis zu den Kernen</translation>
    </message>
    <message>
        <source>&amp;Write the report</source>
        <translation>Bericht &amp;schreiben</translation>
    </message>
    <message>
        <source>Name the report</source>
        <translation>Bericht benennen</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Web page (*.html)</source>
        <translation>Webseite (*.html)</translation>
    </message>
    <message>
        <source>Choose the climate series</source>
        <translation>Klimareihe wählen</translation>
    </message>
    <message>
        <source>Tables (*.csv);;All files (*)</source>
        <translation>Tabellen (*.csv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The report's name has to end in .pdf or .html.</source>
        <translation>Der Name des Berichts muss auf .pdf oder .html enden.</translation>
    </message>
    <message>
        <source>There is no such folder.</source>
        <translation>Diesen Ordner gibt es nicht.</translation>
    </message>
    <message>
        <source>There is no such climate file.</source>
        <translation>Diese Klimadatei gibt es nicht.</translation>
    </message>
    <message>
        <source>Give the years as numbers of 0 to 500.</source>
        <translation>Die Jahre als Zahlen von 0 bis 500 angeben.</translation>
    </message>
    <message>
        <source>This file is there already and will be replaced.</source>
        <translation>Diese Datei gibt es schon; sie wird ersetzt.</translation>
    </message>
</context>
<context>
    <name>pithward::bench::ResolutionBar</name>
    <message>
        <source> dpi</source>
        <translation> dpi</translation>
    </message>
    <message>
        <source>Resolution of the scan in dots per inch</source>
        <translation>Auflösung des Scans in Punkten je Zoll</translation>
    </message>
    <message>
        <source>Use this resolution</source>
        <translation>Diese Auflösung nehmen</translation>
    </message>
    <message>
        <source>%1 says %2 dpi, which programs write when they do not know. At what resolution was it scanned?</source>
        <translation>%1 sagt %2 dpi, was Programme schreiben, wenn sie es nicht wissen. Mit welcher Auflösung wurde gescannt?</translation>
    </message>
    <message>
        <source>%1 does not say its resolution. At what resolution was it scanned?</source>
        <translation>%1 sagt seine Auflösung nicht. Mit welcher Auflösung wurde gescannt?</translation>
    </message>
</context>
<context>
    <name>pithward::bench::ReviewPage</name>
    <message>
        <source>This reading can't be shown.</source>
        <translation>Diese Messung lässt sich nicht zeigen.</translation>
    </message>
    <message>
        <source>Nothing waits for a second person</source>
        <translation>Nichts wartet auf eine zweite Person</translation>
    </message>
    <message>
        <source>Nothing waits for the analysts</source>
        <translation>Nichts wartet auf die Bearbeitung</translation>
    </message>
    <message>
        <source>A reading comes here when its analyst says that it is done (W on the bench).</source>
        <translation>Eine Messung kommt hierher, wenn sie fertig gemeldet ist (W am Messplatz).</translation>
    </message>
    <message>
        <source>What waits</source>
        <translation>Was wartet</translation>
    </message>
    <message>
        <source>What is to be known of the finding</source>
        <translation>Was vom Befund zu wissen ist</translation>
    </message>
    <message>
        <source>Comment that goes with the verdict (I)</source>
        <translation>Bemerkung, die zum Urteil gehört (I)</translation>
    </message>
    <message>
        <source>Comment</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Findings that wait for a second person: %1</source>
        <translation>Befunde, die auf eine zweite Person warten: %1</translation>
    </message>
    <message>
        <source>Findings that wait for the analysts: %1</source>
        <translation>Befunde, die auf die Bearbeitung warten: %1</translation>
    </message>
</context>
<context>
    <name>pithward::bench::ScaleDialog</name>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1 dpi</source>
        <translation>%1 dpi</translation>
    </message>
    <message>
        <source>%1, which programs write when they do not know</source>
        <translation>%1, was Programme schreiben, wenn sie es nicht wissen</translation>
    </message>
    <message>
        <source>Scale of the scan</source>
        <translation>Maßstab des Scans</translation>
    </message>
    <message>
        <source> dpi</source>
        <translation> dpi</translation>
    </message>
    <message>
        <source>Resolution that you know of, in dots per inch</source>
        <translation>Auflösung, die Sie kennen, in Punkten je Zoll</translation>
    </message>
    <message>
        <source>In use</source>
        <translation>Es gilt</translation>
    </message>
    <message>
        <source>The file says</source>
        <translation>Die Datei sagt</translation>
    </message>
    <message>
        <source>You say</source>
        <translation>Sie sagen</translation>
    </message>
    <message>
        <source>The ruler says</source>
        <translation>Das Lineal sagt</translation>
    </message>
    <message>
        <source>Look for a ruler</source>
        <translation>Lineal suchen</translation>
    </message>
    <message>
        <source>Draw a line along it</source>
        <translation>Linie daran entlang</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Nehmen</translation>
    </message>
    <message>
        <source>Use what %1</source>
        <translation>Nehmen, was %1</translation>
    </message>
    <message>
        <source>none yet: widths need one</source>
        <translation>noch keiner: Breiten brauchen einen</translation>
    </message>
    <message numerus="yes">
        <source>%1, from %n marks</source>
        <translation>
            <numerusform>%1, aus %n Strich</numerusform>
            <numerusform>%1, aus %n Strichen</numerusform>
        </translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>noch nicht gelesen</translation>
    </message>
    <message>
        <source>The file and you say different things. A ruler on the scan would tell.</source>
        <translation>Die Datei und Sie sagen Verschiedenes. Ein Lineal auf dem Scan würde es zeigen.</translation>
    </message>
</context>
<context>
    <name>pithward::bench::ScaleEditor</name>
    <message>
        <source>Reading the ruler</source>
        <translation>Das Lineal lesen</translation>
    </message>
    <message>
        <source>Looking for a ruler</source>
        <translation>Lineal suchen</translation>
    </message>
    <message>
        <source>No ruler is seen on this scan. If there is one, draw a line along its marks (D).</source>
        <translation>Auf diesem Scan ist kein Lineal zu sehen. Wenn eines da ist, ziehen Sie eine Linie entlang seiner Striche (D).</translation>
    </message>
</context>
<context>
    <name>pithward::bench::ScanSettling</name>
    <message>
        <source>%1 is read already: its scan stays.</source>
        <translation>%1 ist schon gelesen: sein Scan bleibt.</translation>
    </message>
    <message>
        <source>%1 gets the scan %2, place %3</source>
        <translation>%1 bekommt den Scan %2, Stelle %3</translation>
    </message>
    <message>
        <source>%1 gets the scan %2</source>
        <translation>%1 bekommt den Scan %2</translation>
    </message>
    <message>
        <source>%1 has the scan %2 no more</source>
        <translation>%1 hat den Scan %2 nicht mehr</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Zurücknehmen: %1</translation>
    </message>
    <message>
        <source>%1 lies outside of the project's folder. Put it into that folder first.</source>
        <translation>%1 liegt außerhalb des Projektordners. Legen Sie die Datei zuerst in diesen Ordner.</translation>
    </message>
</context>
<context>
    <name>pithward::bench::ScanView</name>
    <message>
        <source>Scan</source>
        <translation>Scan</translation>
    </message>
    <message>
        <source>The scan with its paths and ring boundaries</source>
        <translation>Der Scan mit seinen Wegen und Jahrringgrenzen</translation>
    </message>
</context>
<context>
    <name>pithward::bench::SeriesBand</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 has no ring of %2</source>
        <translation>%1 hat keinen Jahrring von %2</translation>
    </message>
    <message>
        <source>This series has no years yet.</source>
        <translation>Diese Reihe hat noch keine Jahre.</translation>
    </message>
    <message>
        <source>its growth</source>
        <translation>sein Zuwachs</translation>
    </message>
    <message>
        <source>mean of the others</source>
        <translation>Mittel der anderen</translation>
    </message>
</context>
<context>
    <name>pithward::bench::SeriesPlot</name>
    <message>
        <source>Ring widths</source>
        <translation>Jahrringbreiten</translation>
    </message>
    <message>
        <source>The ring widths by year; arrow keys go from ring to ring</source>
        <translation>Die Jahrringbreiten nach Jahren; Pfeiltasten gehen von Ring zu Ring</translation>
    </message>
    <message>
        <source>Ring width, mm</source>
        <translation>Jahrringbreite, mm</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>Year; thin lines: the other cores on the bench</source>
        <translation>Jahr; dünne Linien: die anderen Kerne auf dem Messplatz</translation>
    </message>
    <message>
        <source>Year; thin lines: the other cores on the bench; dashed: their mean</source>
        <translation>Jahr; dünne Linien: die anderen Kerne auf dem Messplatz; gestrichelt: ihr Mittel</translation>
    </message>
    <message>
        <source>Ring, counted from the bark</source>
        <translation>Jahrring, von der Rinde gezählt</translation>
    </message>
    <message>
        <source>Year; dashed: the site's mean</source>
        <translation>Jahr; gestrichelt: Mittel des Standorts</translation>
    </message>
    <message>
        <source>Year; thin: the tree's other cores; dashed: the site's mean</source>
        <translation>Jahr; dünn: Kerne des Baums; gestrichelt: Mittel des Standorts</translation>
    </message>
    <message>
        <source>Year; thin: the tree's other cores</source>
        <translation>Jahr; dünn: andere Kerne des Baums</translation>
    </message>
</context>
<context>
    <name>pithward::bench::SettleDialog</name>
    <message>
        <source>Scans and cores</source>
        <translation>Scans und Kerne</translation>
    </message>
    <message>
        <source>&amp;Scans</source>
        <translation>&amp;Scans</translation>
    </message>
    <message>
        <source>&amp;Cores</source>
        <translation>&amp;Kerne</translation>
    </message>
    <message>
        <source>Scans of the project</source>
        <translation>Scans des Projekts</translation>
    </message>
    <message>
        <source>Cores of the project</source>
        <translation>Kerne des Projekts</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>&amp;Number on the scan</source>
        <translation>&amp;Nummer auf dem Scan</translation>
    </message>
    <message>
        <source>From the top, or from the left where the cores stand upright. A click on the core in the picture does the same; a scan of one core needs neither.</source>
        <translation>Von oben, oder von links, wo die Kerne aufrecht stehen. Ein Klick auf den Kern im Bild tut dasselbe; ein Scan mit einem Kern braucht keins von beiden.</translation>
    </message>
    <message>
        <source>&amp;Add scans…</source>
        <translation>Scans &amp;hinzufügen…</translation>
    </message>
    <message>
        <source>&amp;Give the scan to the core</source>
        <translation>Den Scan dem Kern &amp;geben</translation>
    </message>
    <message>
        <source>Ta&amp;ke the scan from the core</source>
        <translation>Dem Kern den Scan &amp;nehmen</translation>
    </message>
    <message>
        <source>Take &amp;back</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Every core has its scan, and every scan its core.</source>
        <translation>Jeder Kern hat seinen Scan und jeder Scan seinen Kern.</translation>
    </message>
    <message>
        <source>Cores without a scan: %1. Scans without a core: %2. Scans on which nothing tells the cores apart: %3.</source>
        <translation>Kerne ohne Scan: %1. Scans ohne Kern: %2. Scans, auf denen nichts die Kerne unterscheidet: %3.</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>no core</source>
        <translation>kein Kern</translation>
    </message>
    <message>
        <source>which is which? %1</source>
        <translation>welcher ist welcher? %1</translation>
    </message>
    <message>
        <source>no scan</source>
        <translation>kein Scan</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 is not there</source>
        <translation>%1 ist nicht da</translation>
    </message>
    <message>
        <source>Its scan stays: the core is read, or the project can't be written to.</source>
        <translation>Sein Scan bleibt: der Kern ist gelesen, oder das Projekt ist schreibgeschützt.</translation>
    </message>
    <message>
        <source>There is no scan.</source>
        <translation>Es gibt keinen Scan.</translation>
    </message>
    <message>
        <source>Opening…</source>
        <translation>Wird geöffnet…</translation>
    </message>
    <message>
        <source>No code was read on it.</source>
        <translation>Kein Code wurde darauf gelesen.</translation>
    </message>
    <message>
        <source>Codes on it: %1</source>
        <translation>Codes darauf: %1</translation>
    </message>
    <message>
        <source>Add scans</source>
        <translation>Scans hinzufügen</translation>
    </message>
    <message>
        <source>Scans (*.tif *.tiff *.png *.jpg *.jpeg)</source>
        <translation>Scans (*.tif *.tiff *.png *.jpg *.jpeg)</translation>
    </message>
</context>
<context>
    <name>pithward::bench::SettlePicture</name>
    <message>
        <source>The scan</source>
        <translation>Der Scan</translation>
    </message>
</context>
<context>
    <name>pithward::bench::SitePage</name>
    <message>
        <source>No series of the site shows a ring too many or too few</source>
        <translation>Keine Reihe des Standorts zeigt einen Jahrring zu viel oder zu wenig</translation>
    </message>
    <message>
        <source>This reading was passed. With a new finding it waits for a second person again.</source>
        <translation>Diese Messung war angenommen. Mit einem neuen Befund wartet sie wieder auf eine zweite Person.</translation>
    </message>
    <message>
        <source>Date the site</source>
        <translation>Standort datieren</translation>
    </message>
    <message>
        <source>Series of the site, those that want a look first</source>
        <translation>Reihen des Standorts, die anzusehen sind zuerst</translation>
    </message>
    <message>
        <source>How each series goes with the others through time</source>
        <translation>Wie jede Reihe im Lauf der Zeit zu den anderen passt</translation>
    </message>
    <message>
        <source>The chosen series on the mean of the others</source>
        <translation>Die gewählte Reihe auf dem Mittel der anderen</translation>
    </message>
    <message>
        <source>The chronology of the site, its depth and its signal</source>
        <translation>Die Chronologie des Standorts, ihre Belegung und ihr Signal</translation>
    </message>
    <message>
        <source>A click on a year, or Return at the one that is pointed at, opens its ring on the bench. The wheel comes closer.</source>
        <translation>Ein Klick auf ein Jahr, oder die Eingabetaste an dem, auf das gezeigt wird, öffnet seinen Jahrring am Messplatz. Das Rad geht näher heran.</translation>
    </message>
    <message>
        <source>How each series goes with the others</source>
        <translation>Wie jede Reihe zu den anderen passt</translation>
    </message>
    <message>
        <source>The chronology of the site</source>
        <translation>Die Chronologie des Standorts</translation>
    </message>
    <message>
        <source>Dating the site again…</source>
        <translation>Der Standort wird neu datiert…</translation>
    </message>
    <message>
        <source>Dating the site…</source>
        <translation>Der Standort wird datiert…</translation>
    </message>
    <message>
        <source>Series of the site: %1</source>
        <translation>Reihen des Standorts: %1</translation>
    </message>
    <message>
        <source>The site is not dated yet.</source>
        <translation>Der Standort ist noch nicht datiert.</translation>
    </message>
    <message>
        <source>Nothing is noted of the years: they stay as they are until they are changed</source>
        <translation>Zu den Jahren wird nichts vermerkt: Sie bleiben, bis sie geändert werden</translation>
    </message>
    <message>
        <source>A bar is as high as %1 years correlate with the others, 1 at most. An open bar with a number fits clearly better with so many years added, a faint one nowhere better than by chance. A bracket that points down: a ring is missing; up: one is counted twice.</source>
        <translation>Ein Balken ist so hoch, wie %1 Jahre mit den anderen korrelieren, höchstens 1. Ein offener Balken mit Zahl passt mit so vielen Jahren mehr deutlich besser, ein blasser nirgends besser als durch Zufall. Eine Klammer nach unten: ein Ring fehlt; nach oben: einer ist doppelt gezählt.</translation>
    </message>
</context>
<context>
    <name>pithward::bench::SlipPanel</name>
    <message>
        <source>What the other cores say</source>
        <translation>Was die anderen Kerne sagen</translation>
    </message>
    <message>
        <source>Places on the scan, the likeliest first</source>
        <translation>Stellen auf dem Scan, die wahrscheinlichste zuerst</translation>
    </message>
    <message>
        <source>Show the wood</source>
        <translation>Das Holz zeigen</translation>
    </message>
    <message>
        <source>Not so</source>
        <translation>Nicht so</translation>
    </message>
    <message>
        <source>Can't be told</source>
        <translation>Nicht zu entscheiden</translation>
    </message>
    <message>
        <source>%1 (%2 of %3)</source>
        <translation>%1 (%2 von %3)</translation>
    </message>
    <message>
        <source>Where it may lie on the scan, the likeliest first:</source>
        <translation>Wo es auf dem Scan liegen kann, das Wahrscheinlichste zuerst:</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Annehmen</translation>
    </message>
</context>
<context>
    <name>pithward::bench::StageBars</name>
    <message>
        <source>How many cores are through each stage</source>
        <translation>Wie viele Kerne jede Stufe hinter sich haben</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1: %2 von %3</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>pithward::bench::StartPage</name>
    <message>
        <source>Open a scan of increment cores</source>
        <translation>Einen Scan von Bohrkernen öffnen</translation>
    </message>
    <message>
        <source>Sanded and scanned, TIFF, PNG or JPEG. Pithward finds the cores, marks the ring
boundaries and measures the widths; you look at what is in doubt.</source>
        <translation>Geschliffen und gescannt, TIFF, PNG oder JPEG. Pithward findet die Kerne, bezeichnet die
Jahrringgrenzen und misst die Breiten; Sie sehen an, was im Zweifel ist.</translation>
    </message>
    <message>
        <source>Open scan…</source>
        <translation>Scan öffnen…</translation>
    </message>
    <message>
        <source>Open project…</source>
        <translation>Projekt öffnen…</translation>
    </message>
    <message>
        <source>Look at the demo site</source>
        <translation>Den Demo-Standort ansehen</translation>
    </message>
    <message>
        <source>or drop scans or a folder here</source>
        <translation>oder Scans oder einen Ordner hierher ziehen</translation>
    </message>
    <message>
        <source>New project…</source>
        <translation>Neues Projekt…</translation>
    </message>
</context>
<context>
    <name>pithward::bench::StripLane</name>
    <message>
        <source>Straightened strip and light profile</source>
        <translation>Gerade gelegter Streifen und Helligkeitsprofil</translation>
    </message>
    <message>
        <source>The straightened core appears here</source>
        <translation>Hier erscheint der gerade gelegte Kern</translation>
    </message>
    <message>
        <source>Straightening the core…</source>
        <translation>Der Kern wird gerade gelegt…</translation>
    </message>
    <message>
        <source>light</source>
        <translation>hell</translation>
    </message>
</context>
</TS>
