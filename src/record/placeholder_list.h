/* placeholder_list.h - what people write for a fact that they do not know, by
 * language, one row a word (private to src/record): language, grade, the word.
 *
 * Grades: ANYWHERE, also inside a longer text and in names; IN_TEXT, the same in
 * texts, but in names (a boat may be called Todo Bien) only as the whole; WHOLE, as
 * the whole of any field; TEXT_ONLY, as the whole of a text: a name or code can be
 * this word.
 *
 * Words are written as placeholder.c compares them: small letters without accents,
 * without points inside, one space for a hyphen, three x for more. */
#ifndef MAYDECK_PLACEHOLDER_LIST_H
#define MAYDECK_PLACEHOLDER_LIST_H

#define PLACEHOLDER_LIST(X) \
    X("any", ANYWHERE, "tbd") \
    X("any", ANYWHERE, "fixme") \
    X("any", ANYWHERE, "lorem") \
    X("any", IN_TEXT, "todo") \
    X("any", IN_TEXT, "tba") \
    X("any", IN_TEXT, "tbc") \
    X("any", IN_TEXT, "xxx") \
    X("any", WHOLE, "n/a") \
    X("any", WHOLE, "n a") \
    X("any", WHOLE, "n/d") \
    X("any", WHOLE, "placeholder") \
    X("any", TEXT_ONLY, "x") \
    X("any", TEXT_ONLY, "xx") \
    X("any", TEXT_ONLY, "na") \
    X("any", TEXT_ONLY, "nd") \
    X("any", TEXT_ONLY, "null") \
    X("any", TEXT_ONLY, "nil") \
    X("en", IN_TEXT, "to be filled in") \
    X("en", IN_TEXT, "to be determined") \
    X("en", IN_TEXT, "to be decided") \
    X("en", IN_TEXT, "to be announced") \
    X("en", IN_TEXT, "to be confirmed") \
    X("en", IN_TEXT, "to be defined") \
    X("en", IN_TEXT, "to be recorded") \
    X("en", IN_TEXT, "to be completed") \
    X("en", WHOLE, "to do") \
    X("en", WHOLE, "to be done") \
    X("en", WHOLE, "to be checked") \
    X("en", WHOLE, "to be found") \
    X("en", WHOLE, "to fill in") \
    X("en", WHOLE, "fill in") \
    X("en", WHOLE, "fill me in") \
    X("en", WHOLE, "fill this in") \
    X("en", WHOLE, "none yet") \
    X("en", WHOLE, "not yet") \
    X("en", WHOLE, "not known") \
    X("en", WHOLE, "not known yet") \
    X("en", WHOLE, "not yet known") \
    X("en", WHOLE, "not recorded") \
    X("en", WHOLE, "not applicable") \
    X("en", WHOLE, "not available") \
    X("en", WHOLE, "don't know") \
    X("en", WHOLE, "dont know") \
    X("en", WHOLE, "no idea") \
    X("en", WHOLE, "no data") \
    X("en", TEXT_ONLY, "none") \
    X("en", TEXT_ONLY, "unknown") \
    X("en", TEXT_ONLY, "unclear") \
    X("en", TEXT_ONLY, "unspecified") \
    X("en", TEXT_ONLY, "undefined") \
    X("en", TEXT_ONLY, "pending") \
    X("en", TEXT_ONLY, "missing") \
    X("de", TEXT_ONLY, "unbekannt") \
    X("de", TEXT_ONLY, "offen") \
    X("de", TEXT_ONLY, "unklar") \
    X("de", TEXT_ONLY, "fehlt") \
    X("de", TEXT_ONLY, "keine") \
    X("de", TEXT_ONLY, "keiner") \
    X("de", TEXT_ONLY, "ka") \
    X("de", WHOLE, "k a") \
    X("de", WHOLE, "k/a") \
    X("de", WHOLE, "noch offen") \
    X("de", WHOLE, "noch unbekannt") \
    X("de", WHOLE, "nicht bekannt") \
    X("de", WHOLE, "keine angabe") \
    X("de", WHOLE, "ausfullen") \
    X("de", WHOLE, "auszufullen") \
    X("de", WHOLE, "bitte ausfullen") \
    X("de", WHOLE, "noch auszufullen") \
    X("de", WHOLE, "zu erganzen") \
    X("de", WHOLE, "wird nachgetragen") \
    X("fr", TEXT_ONLY, "inconnu") \
    X("fr", TEXT_ONLY, "inconnue") \
    X("fr", TEXT_ONLY, "aucun") \
    X("fr", TEXT_ONLY, "aucune") \
    X("fr", WHOLE, "a remplir") \
    X("fr", WHOLE, "a completer") \
    X("fr", WHOLE, "a definir") \
    X("fr", WHOLE, "a determiner") \
    X("fr", WHOLE, "a preciser") \
    X("fr", WHOLE, "a verifier") \
    X("fr", WHOLE, "a faire") \
    X("fr", WHOLE, "non renseigne") \
    X("fr", WHOLE, "pas connu") \
    X("it", TEXT_ONLY, "sconosciuto") \
    X("it", TEXT_ONLY, "sconosciuta") \
    X("it", TEXT_ONLY, "ignoto") \
    X("it", TEXT_ONLY, "nessuno") \
    X("it", TEXT_ONLY, "nessuna") \
    X("it", WHOLE, "da compilare") \
    X("it", WHOLE, "da completare") \
    X("it", WHOLE, "da definire") \
    X("it", WHOLE, "da determinare") \
    X("it", WHOLE, "da verificare") \
    X("it", WHOLE, "da fare") \
    X("it", WHOLE, "non noto") \
    X("it", WHOLE, "non disponibile") \
    X("es", TEXT_ONLY, "desconocido") \
    X("es", TEXT_ONLY, "desconocida") \
    X("es", TEXT_ONLY, "pendiente") \
    X("es", TEXT_ONLY, "ninguno") \
    X("es", TEXT_ONLY, "ninguna") \
    X("es", WHOLE, "s/d") \
    X("es", WHOLE, "sin datos") \
    X("es", WHOLE, "por definir") \
    X("es", WHOLE, "por determinar") \
    X("es", WHOLE, "por completar") \
    X("es", WHOLE, "por confirmar") \
    X("es", WHOLE, "por rellenar") \
    X("es", WHOLE, "a rellenar") \
    X("es", WHOLE, "para rellenar") \
    X("es", WHOLE, "rellenar") \
    X("es", WHOLE, "no se sabe") \
    X("el", TEXT_ONLY, "αγνωστο") \
    X("el", TEXT_ONLY, "αγνωστη") \
    X("el", TEXT_ONLY, "κανενα") \
    X("el", TEXT_ONLY, "καμια") \
    X("el", WHOLE, "δεν ειναι γνωστο") \
    X("el", WHOLE, "προσ συμπληρωση") \
    X("el", WHOLE, "να συμπληρωθει") \
    X("el", WHOLE, "δ/υ") \
    X("hr", TEXT_ONLY, "nepoznato") \
    X("hr", TEXT_ONLY, "nepoznata") \
    X("hr", TEXT_ONLY, "nepoznat") \
    X("hr", TEXT_ONLY, "nema") \
    X("hr", WHOLE, "nije poznato") \
    X("hr", WHOLE, "treba popuniti") \
    X("hr", WHOLE, "za popuniti") \
    X("hr", WHOLE, "popuniti") \
    X("hr", WHOLE, "nema podataka") \
    X("tr", TEXT_ONLY, "bilinmiyor") \
    X("tr", TEXT_ONLY, "bilinmeyen") \
    X("tr", TEXT_ONLY, "yok") \
    X("tr", WHOLE, "doldurulacak") \
    X("tr", WHOLE, "belirlenecek") \
    X("tr", WHOLE, "belli degil") \
    X("tr", WHOLE, "bilgi yok")

#endif
