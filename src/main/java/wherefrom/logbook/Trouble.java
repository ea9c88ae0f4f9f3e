package wherefrom.logbook;

/**
 * Where reading stopped before the end, and why.
 *
 * @param file the file's name
 * @param line counted from 1
 * @param offset of the line's first byte
 * @param why what was found, without a full stop
 * @param newer whether a newer version of the program wrote it, so that nothing is damaged
 * @param wholeBehind lines behind it that are whole in themselves
 * @param brokenBehind lines behind it that are not
 */
record Trouble(
    String file,
    int line,
    int offset,
    String why,
    boolean newer,
    int wholeBehind,
    int brokenBehind) {

  Trouble withBehind(boolean isWhole) {
    int whole = isWhole ? 1 : 0;
    return new Trouble(
        file, line, offset, why, newer, wholeBehind + whole, brokenBehind + 1 - whole);
  }

  /** For the person. */
  String sentence(int entriesRead) {
    String where = file + ", line " + line + ", byte " + offset;
    if (newer) {
      return "This job was written by a newer version of Wherefrom ("
          + where
          + ": "
          + why
          + "). It is open for reading only, with the "
          + entriesRead
          + " entries that are understood. Use the newer version.";
    }
    return "The logbook is damaged at "
        + where
        + ": "
        + why
        + ". "
        + entriesRead
        + " entries were read. After the damage there are "
        + wholeBehind
        + " whole lines and "
        + brokenBehind
        + " broken ones. The job is open for reading only. Nothing was changed. Go on"
        + " with the copy on the USB drive, or an exported file.";
  }
}
