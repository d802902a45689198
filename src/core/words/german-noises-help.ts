import type { NoiseWords } from "./noise-words.ts";

export const answersIn: NoiseWords["answers"] = {
  gone: "weg",
  less: "weniger",
  "the same": "unverändert",
  more: "mehr",
  "it goes with it": "es geht mit der Hand",
  "there too": "dort auch",
  "not there": "dort nicht",
};

/** What each cause is, and what helps against it, in German. */
export const remediesIn: Pick<NoiseWords, "means" | "remedies" | "cautions"> = {
  means: {
    "in the programme":
      "Ein Mikrofon, sein Vorverstärker oder eine alte Aufnahme bringt es mit. Nichts dahinter nimmt es weg.",
    "before the knob":
      "Jeder Eingang rauscht ein wenig. Kommt wenig hinein, wird das Rauschen mit aufgedreht.",
    "behind the knob":
      "Ein Ausgang hat sein eigenes Rauschen, das immer da ist. Man hört es, wo wenig gesendet wird oder wo Kopfhörer sehr empfindlich sind.",
    "behind the last knob":
      "Der Ausgang hat sein eigenes Rauschen, das immer da ist, was auch gedreht wird. Sehr empfindliche Kopfhörer zeigen es.",
    "the box itself": "Jedes Gerät rauscht selbst; ohne Regler immer gleich laut.",
    "radio link":
      "Schwacher oder gestörter Empfang ist als Rauschen, Knacken oder Aussetzen zu hören.",
    "ground loop":
      "Beide Geräte sind über ihr Netzkabel geerdet, und das Tonkabel verbindet die zwei noch einmal. In diesem Ring fließt ein Netzstrom, auch durch die Masse des Kabels, und dort wird er hörbar.",
    "loop by another lead":
      "Ein Kabel ohne Ton, etwa USB, Netzwerk, Steuerung oder Bildschirm, verbindet die Massen zweier Geräte, und das Tonkabel verbindet sie ein zweites Mal.",
    "lead picks it up":
      "Ein langes unsymmetrisches Kabel neben Netzteilen, Dimmern oder Netzkabeln nimmt deren Feld auf.",
    "return lost":
      "Ohne Masse kommt das Programm auf einem anderen Weg zurück, und das Netz mit ihm. Meist klingt es auch dünn.",
    "power supply":
      "Das Netzteil gibt etwas vom Netz weiter: ein kleines Steckernetzteil durch seinen Filter, ein altes durch müde Kondensatoren.",
    "knob dirty": "Staub oder Abrieb auf der Bahn unterbricht den Kontakt, solange gedreht wird.",
    "plugs not clean":
      "Oxid oder Schmutz zwischen Stecker und Feder macht Kontakt und wieder nicht.",
    "lead breaking":
      "Meist bricht es dort, wo es in den Stecker geht, und geht wieder, wenn es gebogen wird.",
    "cord breaking": "Meist bricht sie am Stecker oder dort, wo sie in die Muschel geht.",
    "source stutters":
      "Ein Rechner, der dem Ton zu wenig Zeit lässt, hinterlässt Lücken, meist kurz und scharf.",
    "input overloaded":
      "Es kommt mehr hinein, als der Eingang verträgt; die Spitzen werden noch vor jedem Regler des Geräts abgeschnitten. Dieses Gerät leiser zu drehen macht es nur leiser.",
    "output at its end":
      "Es wird mehr verlangt, als der Ausgang in diese Kopfhörer geben kann; die Spitzen werden abgeschnitten.",
    "driver torn":
      "Eine gerissene oder lose Membran scheppert, vor allem bei Bass und wenn es laut ist.",
    "something else": "Keine der Ursachen hier passt gut zu dem, was zu hören war.",
  },
  remedies: {
    "turn the earlier up":
      "Was davor kommt so weit aufdrehen, wie es sauber bleibt, und hier wieder auf die alte Lautstärke zurückdrehen.",
    "turn it up and the next down":
      "Diesen Regler so weit aufdrehen, wie es sauber bleibt, und den nächsten dahinter auf die alte Lautstärke zurückdrehen.",
    "earlier up, next down":
      "Was davor kommt so weit aufdrehen, wie es sauber bleibt, und den nächsten Regler dahinter auf die alte Lautstärke zurückdrehen.",
    "that lead left out":
      "Dieses Kabel beim Hören weglassen oder einen passenden Trenner dazwischen setzen: für USB, für das Netzwerk.",
    "wheel before the ears":
      "Ein Kabel mit Lautstärkerad vor den Kopfhörer setzen: das Rad zurück, den Regler auf. Das nimmt das Rauschen mit herunter.",
    "less sensitive headphones":
      "Einen weniger empfindlichen Kopfhörer ausgeben, etwa einen ohrumschließenden statt In-Ears.",
    "quieter box": "Einen anderen Ausgang nehmen, oder ein Gerät, das selbst weniger rauscht.",
    "mend at the source":
      "Dorthin gehen, wo es herkommt: anderes Mikrofon oder anderer Kanal, dort neu einpegeln, andere Aufnahme.",
    "nearer and another channel":
      "Antennen mit Sicht aufeinander, ein paar Schritte von anderem Funk entfernt; dann ein anderer Kanal und frische Batterien.",
    "other way by cable": "Wo es darauf ankommt, diesen Platz per Kabel speisen.",
    "all from one outlet":
      "Alle Geräte aus einer Steckdose oder einem Verteiler speisen, damit der Ring klein ist.",
    "on its battery": "Den Rechner am Akku betreiben, wenn er für die Vorstellung reicht.",
    "balanced or transformer":
      "Beide symmetrisch verbinden, oder einen Übertrager (Trennübertrager) in den Signalweg setzen.",
    "screen lifted at one end":
      "Zwischen symmetrischen Geräten: ein richtiges Kabel, dessen Schirm nur an einem Ende angeschlossen ist. Gemeint ist der Schirm des Signals, niemals der Schutzleiter.",
    "away from supplies":
      "Das Kabel weg von Netzteilen und Netzkabeln legen, und quer dazu, wo sie sich treffen müssen.",
    "balanced lead": "Symmetrisch verbinden, oder ein so kurzes Kabel nehmen wie möglich.",
    "another lead": "Ein anderes Kabel nehmen und in dieses einen Knoten machen.",
    "another supply":
      "Ein anderes Netzteil mit gleicher Spannung, Polung und gleichem Strom versuchen.",
    "clean the plug": "Fünfmal aus- und einstecken; dann abwischen oder Kontaktreiniger nehmen.",
    "turn the knob to and fro":
      "Zwanzigmal von Anschlag zu Anschlag drehen, und was dahinter kommt, ist zugedreht.",
    "spray the knob":
      "Ausschalten und Kontaktreiniger für Widerstandsbahnen nehmen; auf Dauer hilft nur ein neuer Regler.",
    "other headphones": "Einen anderen Kopfhörer ausgeben und diesen zur Reparatur weglegen.",
    "bigger buffer":
      "Einen größeren Audiopuffer einstellen, andere Programme schließen, Stromsparen abschalten; eine andere USB-Buchse nehmen.",
    "source down, amplifier up":
      "Was davor kommt leiser drehen, und am letzten Regler vor den Ohren aufholen.",
    pad: "Reicht das nicht, eine Dämpfung einschalten: den Schalter am Eingang oder ein Glied im Kabel.",
    "turn it down":
      "Leiser drehen; was fehlt, geben passende Kopfhörer oder ein größerer Verstärker.",
    "fewer or other headphones":
      "Weniger Kopfhörer an diesen Ausgang hängen, oder solche, die besser zu ihm passen.",
    "ask by ear":
      "Den Platz nach Gehör prüfen: links, rechts und das Paar zeigen eine fehlende Masse.",
  },
  cautions: {
    "never lift a mains earth":
      "Niemals den Schutzleiter eines Netzsteckers abkleben oder abtrennen, auch nicht mit einem Adapter: Er ist dafür da, dass bei einem Fehler niemand stirbt.",
    "a tingle":
      "Kribbelt etwas Metallenes, aufhören: Hände weg, an der Wand abgeschaltet lassen und eine Elektrofachkraft holen.",
    "volume first": "Erst leiser drehen, dann stecken oder schalten.",
    "power off": "Vor dem Sprühen ausschalten, und erst wieder ein, wenn es trocken ist.",
  },
};
