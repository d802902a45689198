import type { Words } from "#ui/words/use-words.ts";

const screens: Words["help"]["screens"] = {
  start: {
    question: "Was führt Sie her?",
    answer:
      "Drei Arbeiten beginnen hier: alle Kopfhörer vor der Vorstellung, einer, der falsch klingt, ein Kabel, dem noch niemand traut. Zum ersten Versuch muss nichts angesteckt sein: Der Aufbau ohne Geräte hat einen Fehler zum Finden.",
  },
  board: {
    question: "Wer ist der Nächste?",
    answer:
      "Der Aufbau von der Quelle zu allen Ohren: Links ist die gefüllte Bahn, rechts die umrandete. Ein Haken ist in Ordnung, gelbes Band braucht Sie, ein blasser Zweig wurde noch nicht gehört. Auf einen Namen drücken, um dorthin zu gehen.",
  },
  "hands up": {
    question: "Wer zeigt anderswohin als die anderen?",
    answer:
      "Alle tragen ihre Kopfhörer, hören gleichzeitig dasselbe und zeigen, wo es ist. Den Tisch entlangsehen und nur auf die drücken, die abweichen: Alle anderen werden mit eingetragen.",
  },
  curtain: {
    question: "Was war wirklich falsch?",
    answer:
      "Der Aufbau ohne Geräte hatte einen Fehler, gezogen nach seiner Nummer. Hier ist er: wo er war, was er mit den Bahnen tat und ob Sie ihn benannt hatten.",
  },
  rig: {
    question: "Was hängt woran?",
    answer:
      "Der Aufbau von der Quelle bis zu jedem Paar Ohren, wie das Programm ihn kennt. Das Ende eines Kabels in eine andere Buchse ziehen, auf ein Teil drücken, um es zu benennen, zu ändern oder zu kopieren; alles lässt sich zurücknehmen.",
  },
  levels: {
    question: "Wie laut ist es, und wie sehr rauscht es?",
    answer:
      "Das Programm von der Quelle bis zu den Ohren: darüber seine Spitzen, darunter das Rauschen, und über jedem Gerät der Pegel, ab dem es verzerrt. Die Regler lassen sich drehen; was niemand eingetragen hat, gilt als üblich, mit dem, was das ausmachen kann.",
  },
  sessions: {
    question: "Welcher Abend soll es sein?",
    answer:
      "Jede Sitzung, die dieser Browser aufhebt, die neueste zuerst. Mit einer weitermachen, mit ihrem Aufbau die von morgen beginnen, zwei nebeneinanderlegen oder eine als Datei mitnehmen.",
  },
  plan: {
    question: "Welches Kabel passt zwischen die beiden?",
    answer:
      "Sagen, wo der Ton herauskommt, wo er hineingeht und was zu hören sein soll. Der Stromkreis jedes Kabels wird mit den Buchsen an beiden Enden durchgerechnet; was die Ohren bekommen, ist am fernen Ende gezeichnet.",
  },
  listen: {
    question: "Wie klingt dieser Fehler?",
    answer:
      "Einen Fehler des Aufbaus wählen und im eigenen, heilen Kopfhörer hören; ihm selbst muss dafür nichts fehlen. Ton und Zeichnung kommen aus denselben vier Zahlen: was jedes Ohr von jeder Seite bekommt.",
  },
  sheet: {
    question: "Was wird übergeben?",
    answer:
      "Eine Seite mit dem, was hier gehört, gefunden und behoben wurde, und dem, was nicht geprüft wurde. Einen Namen daraufschreiben, drucken oder als PDF sichern; die CSV-Datei enthält dasselbe zeilenweise.",
  },
  words: {
    question: "Was heißt dieses Wort?",
    answer:
      "Die Fachwörter, wie dieses Programm sie gebraucht, jedes in ein, zwei Sätzen. Einen Teil des Wortes tippen, um es zu finden.",
  },
  complaint: {
    question: "Was sagen sie, und wo?",
    answer:
      "Aufnehmen, worüber jemand klagt, in dessen eigenen Worten. Kein Wort entscheidet etwas: Jedes macht nur manche Fehler wahrscheinlicher, und danach richtet sich die nächste Frage.",
  },
  noise: {
    question: "Wo kommt das Geräusch herein?",
    answer:
      "Was zugedreht wird, nimmt mit, was davor hereinkommt, und nichts, was dahinter hereinkommt. So sagt jeder Regler, in welcher Hälfte des Weges ein Rauschen, Brummen oder Knistern beginnt. Das eine versuchen, sagen, was daraus wurde, und es zurückstellen.",
  },
  "sound out": {
    question: "Wo kommt der Ton heraus?",
    answer:
      "Welcher Ausgang dieses Geräts den Aufbau speist. Leise auf jedem spielen und hören, welcher es ist, bevor es sonst jemand hört.",
  },
  prove: {
    question: "Welches Kabel haben Sie in der Hand?",
    answer:
      "Sagen, was an jedem Ende ist und wie es geprüft werden kann: mit dem Multimeter, mit einer Soundkarte oder nach Gehör. Daraus folgt, welche Kontakte verbunden sein müssen und welche nicht.",
  },
  "prove reading": {
    question: "Was zeigt das Messgerät?",
    answer:
      "Die beiden gezeichneten Kontakte berühren und sagen, was abzulesen ist. Das nächste Paar ist das, was am meisten von dem verrät, was noch offen ist; ein gesundes Kabel ist fertig, wenn alles ausgeschlossen ist, was ein Multimeter finden kann.",
  },
  sounds: {
    question: "Welchen Klang brauchen Sie?",
    answer:
      "Alle Testsignale, von Hand zu spielen oder als Dateien mitzunehmen. Der Streifen zeigt, wann es links und wann es rechts ist; ein hohler Balken ist verpolt.",
  },
  flex: {
    question: "Bricht es ab, wenn es gebogen wird?",
    answer:
      "Töne laufen durch das Kabel, während Sie es von Stecker zu Stecker biegen. Jede kurze Unterbrechung wird dort markiert, wo Ihre Hand war, und was es war: eine Seite, beide oder der Rückleiter.",
  },
  measure: {
    question: "Was tut das Kabel, in Zahlen?",
    answer:
      "Eine Soundkarte spielt durch das Kabel und nimmt auf, was zurückkommt: Pegel, Übersprechen, Polarität und Rauschen. Zwei Buchsen und ein gutes Kabel zum Vergleich genügen.",
  },
  training: {
    question: "Erkennen Sie den Fehler nach Gehör?",
    answer:
      "Ein Klang wird gespielt, wie ein Fehler ihn durchließe: Sagen Sie, welcher. Was verwechselt wurde, kommt öfter, und gezählt wird nach Fehlern.",
  },
  asked: {
    question: "Wo im Kopf war der Klang?",
    answer:
      "Abspielen, hören und zeigen, wo es war: an einem Ohr, in der Mitte, etwas seitlich oder rundum ohne Ort. Wenn andere zeigen und Sie ihnen gegenüberstehen, den Kopf auf dem Bildschirm drehen.",
  },
  absent: {
    question: "Warum wird hier nichts gefragt?",
    answer:
      "Hier ist niemand, so wurde es gesagt: Hierher wird niemand mehr geschickt, und auf dem Blatt steht, dass nicht geprüft wurde. Sobald wieder jemand hier ist, wird der Platz gehört wie jeder andere.",
  },
  balance: {
    question: "Um wie viel lauter muss eine Seite sein?",
    answer:
      "Ein Rauschen läuft; schieben, bis es in der Mitte des Kopfes sitzt. Wie weit geschoben werden musste, um so viel unterscheiden sich die beiden Seiten.",
  },
  look: {
    question: "Was sehen Sie dort?",
    answer:
      "Manche Fehler sieht man, bevor man sie hört: ein Stecker, der nicht ganz steckt, ein gedrückter Knopf, ein Regler am Anschlag. An der genannten Stelle nachsehen und drücken, was zu sehen ist.",
  },
  twist: {
    question: "Ändert es sich, wenn der Stecker gedreht wird?",
    answer:
      "Ein schmutziger oder verbogener Kontakt kommt und geht, wenn sein Stecker in der Buchse gedreht wird. Sanft drehen, während etwas spielt, und sagen, ob sich etwas geändert hat.",
  },
  do: {
    question: "Was wird jetzt geändert?",
    answer:
      "Immer nur eines ändern und vorher leiser drehen. Danach hier bestätigen; was dann zu hören ist, verrät, ob es das war. Geht es hier nicht, das angeben: Dann wird etwas anderes gewählt.",
  },
  verdict: {
    question: "Was ist falsch, und was behebt es?",
    answer:
      "Die Stelle der Kette, an der die Bahnen abbrechen, sich kreuzen, zusammenlaufen oder sich verdrehen, wie sicher das ist, und ein Handgriff. Ihn ausführen, hier bestätigen und noch einmal hören: Eine Reparatur zählt erst, wenn sie gehört wurde.",
  },
  healthy: {
    question: "Ist dieser Platz fertig?",
    answer:
      "Links, rechts und Mitte wurden gehört, wo sie hingehören, und alles, was noch falsch sein könnte, kommt zusammen auf weniger als 3 von 100. Was diese Prüfungen nicht hören, steht unter „nicht geprüft“.",
  },
  cups: {
    question: "Was spielt jede Muschel?",
    answer:
      "Eine Muschel flach ans Mikrofon halten, die andere weggedreht, dann umgekehrt. Zu hören ist dann, welche spielt, wie laut, und ob eine gegen die andere verpolt ist.",
  },
};

export const help: Words["help"] = {
  screens,
  toWords: "Fachwörter",
  close: "schließen",
};
