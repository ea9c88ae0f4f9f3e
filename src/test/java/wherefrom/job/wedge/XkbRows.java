package wherefrom.job.wedge;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Keys AE10, AE01 … AE09 (the digits 0, 1 … 9 of a US keyboard), first level, as the compiled
 * keymaps of xkeyboard-config 2.35.1 name them; and the keys AD12 (]) and AD01 (Q, shifted).
 */
enum XkbRows {
  US("0 1 2 3 4 5 6 7 8 9", "bracketright", "Q"),
  DE("0 1 2 3 4 5 6 7 8 9", "plus", "Q"),
  RU("0 1 2 3 4 5 6 7 8 9", "Cyrillic_hardsign", "Cyrillic_SHORTI"),
  FR(
      "agrave ampersand eacute quotedbl apostrophe parenleft minus egrave underscore ccedilla",
      "dollar",
      "A"),
  BE(
      "agrave ampersand eacute quotedbl apostrophe parenleft section egrave exclam ccedilla",
      "dollar",
      "A"),
  CZ("eacute plus ecaron scaron ccaron rcaron zcaron yacute aacute iacute", "parenright", "Q"),
  LT(
      "leftdoublequotemark aogonek ccaron eogonek eabovedot iogonek scaron uogonek umacron"
          + " doublelowquotemark",
      "bracketright",
      "Q"),
  HU("odiaeresis 1 2 3 4 5 6 7 8 9", "uacute", "Q"),
  SK("eacute plus lcaron scaron ccaron tcaron zcaron yacute aacute iacute", "adiaeresis", "Q"),
  FR_AFNOR(
      "guillemotright agrave eacute egrave ecircumflex parenleft parenright leftsinglequotemark"
          + " rightsinglequotemark guillemotleft",
      "dollar",
      "A"),
  FR_BEPO(
      "asterisk quotedbl guillemotleft guillemotright parenleft parenright at plus minus slash",
      "z",
      "B"),
  LT_STD(
      "parenright exclam minus slash semicolon colon comma period equal parenleft",
      "bracketright",
      "Q"),
  PERSIAN(
      "Farsi_0 Farsi_1 Farsi_2 Farsi_3 Farsi_4 Farsi_5 Farsi_6 Farsi_7 Farsi_8 Farsi_9",
      "Arabic_tcheh",
      "Arabic_sukun");

  private static final Map<String, String> KEYSYMS = keysyms();

  private final String row;
  private final String bracket;
  private final String capitalQ;

  XkbRows(String row, String bracket, String capitalQ) {
    this.row = row;
    this.bracket = bracket;
    this.capitalQ = capitalQ;
  }

  /** What arrives for digits from a scanner that types as a US keyboard. */
  String type(String digits) {
    String[] keys = row.split(" ");
    return digits
        .chars()
        .mapToObj(digit -> character(keys[digit - '0']))
        .collect(Collectors.joining());
  }

  /** What arrives for the AIM identifier {@code ]Q} and a digit. */
  String identifier(int modifier) {
    return character(bracket) + character(capitalQ) + type(Integer.toString(modifier));
  }

  private static String character(String keysym) {
    return keysym.length() == 1 ? keysym : KEYSYMS.get(keysym);
  }

  /** Keysym names and their characters: the table of the X Window System protocol, appendix A. */
  private static Map<String, String> keysyms() {
    Map<String, String> map = new LinkedHashMap<>();
    String[] pairs =
        ("agrave à ampersand & eacute é quotedbl \" apostrophe ' parenleft ( minus - egrave è"
                + " underscore _ ccedilla ç section § exclam ! plus + ecaron ě scaron š ccaron č"
                + " rcaron ř zcaron ž yacute ý aacute á iacute í leftdoublequotemark “ aogonek ą"
                + " eogonek ę eabovedot ė iogonek į uogonek ų umacron ū doublelowquotemark „"
                + " odiaeresis ö lcaron ľ tcaron ť guillemotright » ecircumflex ê parenright )"
                + " leftsinglequotemark ‘ rightsinglequotemark ’ guillemotleft « asterisk * at @"
                + " slash / semicolon ; colon : comma , period . equal = bracketright ] dollar $"
                + " uacute ú adiaeresis ä Cyrillic_hardsign ъ Cyrillic_SHORTI Й Arabic_tcheh چ"
                + " Arabic_sukun \u0652")
            .split(" ");
    for (int at = 0; at < pairs.length; at += 2) {
      map.put(pairs[at], pairs[at + 1]);
    }
    for (int digit = 0; digit < 10; digit++) {
      map.put("Farsi_" + digit, Character.toString(0x06F0 + digit));
    }
    return map;
  }
}
