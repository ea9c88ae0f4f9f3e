package wherefrom.ui.settings;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import wherefrom.job.BuiltVersion;
import wherefrom.job.By;
import wherefrom.job.settings.Appearance;
import wherefrom.job.settings.Settings;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.app.Choice;

/** What can be set, and what each is now, in words. */
final class SettingsModel {

  enum What {
    TEXT,
    LOOK,
    SCREEN,
    SOUND,
    UNITS,
    SCANNER,
    CAMERA,
    PHONES,
    SHOP,
    BENCH,
    COPY,
    REPORT,
    ABOUT
  }

  record Line(What what, String heading, String now) {}

  static final List<Choice<Integer>> TEXT =
      List.of(
          new Choice<>(100, "100 %", "to be read at 1 m"),
          new Choice<>(150, "150 %", "1½ times as large"),
          new Choice<>(200, "200 %", "twice as large"));

  static final List<Choice<Appearance>> LOOKS =
      List.of(
          new Choice<>(Appearance.SYSTEM, words(Appearance.SYSTEM), "changes with the system"),
          new Choice<>(Appearance.LIGHT, words(Appearance.LIGHT), "dark letters on a light ground"),
          new Choice<>(Appearance.DARK, words(Appearance.DARK), "light letters on a dark ground"));

  static final List<Choice<UnitSystem>> UNITS =
      List.of(
          new Choice<>(UnitSystem.INCH, "Inches", "thousandths, such as 0.0015 in"),
          new Choice<>(UnitSystem.METRIC, "Millimeters", "hundredths, such as 0.04 mm"));

  private SettingsModel() {}

  static List<Line> lines(Settings now) {
    return List.of(
        new Line(What.TEXT, "Text size", now.textPercent() + " %"),
        new Line(What.LOOK, "Look", words(now.look())),
        new Line(What.SCREEN, "Measure the screen", screen(now)),
        new Line(What.SOUND, "Sound", now.sound() ? "on" : "off"),
        new Line(
            What.UNITS,
            "Units for new jobs",
            now.units() == UnitSystem.INCH ? "inches" : "millimeters"),
        new Line(What.SCANNER, "Scanner", scanner(now)),
        new Line(What.CAMERA, "Camera", now.camera().isEmpty() ? "none chosen" : now.camera()),
        new Line(What.PHONES, "Phones", "add one to the job that is open"),
        new Line(What.SHOP, "Where the jobs lie", where(now)),
        new Line(What.BENCH, "This bench", bench(now)),
        new Line(
            What.COPY,
            "Copy each job when work stops",
            now.secondCopy().map(Path::toString).orElse("none: choose a folder on a USB drive")),
        new Line(What.REPORT, "Save a report", "version, system and log, when something is wrong"),
        new Line(What.ABOUT, "About", BuiltVersion.words() + ", licenses"));
  }

  private static String where(Settings now) {
    return now.workplace()
        .server()
        .map(server -> "shared server: " + server.text())
        .orElseGet(() -> now.shop().toString());
  }

  private static String bench(Settings now) {
    By by = now.workplace().by();
    return "bench " + by.bench() + (by.who().isEmpty() ? ", nobody named" : ", " + by.who());
  }

  private static String words(Appearance look) {
    return switch (look) {
      case SYSTEM -> "as the system";
      case LIGHT -> "light";
      case DARK -> "dark";
    };
  }

  private static String screen(Settings now) {
    return now.pixelsPerMm() > 0
        ? String.format(Locale.ROOT, "measured: %.2f pixels per mm", now.pixelsPerMm())
        : "not measured: keys may be too small or too large";
  }

  private static String scanner(Settings now) {
    Settings.Scanner typing = now.scanner();
    return around("prefix", typing.prefix())
        + ", "
        + around("suffix", typing.suffix())
        + (typing.digits().isEmpty() ? ", digits not taught" : ", digits taught");
  }

  private static String around(String name, String set) {
    return set.isEmpty() ? "no " + name : name + " \"" + set + "\"";
  }
}
