package wherefrom.ui.part;

/** What can be done with a part as it is. */
enum Deed {
  INSPECT("Look", "Look"),
  MEASURE("Measure", "Measure"),
  CHECK("Do the check", "Check"),
  NOTE("Note", "Note"),
  PHOTO("Photo", "Photo"),
  DECIDE("Decide", "Decide"),
  REPRINT("Print its tag again", "Print"),
  PIECES("Pieces on one wire", "Pieces"),
  WASH("Off for washing", "Wash"),
  BACK("Back from washing", "Is back"),
  OUT("It is out", "Is out"),
  BACK_FROM_SHOP("Back from the machine shop", "Is back"),
  TOOK_OUT("Taken out again", "Is out"),
  LOST("It is lost", "Lost"),
  FOUND("It is found", "Found"),
  REPLACE("A new part instead", "New part");

  private final String words;
  private final String brief;

  Deed(String words, String brief) {
    this.words = words;
    this.brief = brief;
  }

  /** For where the person's text is large. */
  String brief() {
    return brief;
  }

  String words() {
    return words;
  }
}
