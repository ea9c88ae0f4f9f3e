package wherefrom.ui.tray;

/** What a photograph of a tray is for. */
public enum TrayPurpose {
  /** Its parts are logged as out of the engine. */
  OUT("Tray: log out"),
  /** It is held against what the job records. */
  CHECK("Tray: check");

  private final String title;

  TrayPurpose(String title) {
    this.title = title;
  }

  String title() {
    return title;
  }
}
