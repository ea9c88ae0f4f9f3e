package wherefrom.ui.settings;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.job.ports.SecondCopies;
import wherefrom.job.settings.Appearance;
import wherefrom.job.settings.Settings;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.files.DriveFolder;

/** Everything that can be set, each as a row with what it is now. */
public final class SettingsScreen extends ListPage {
  public SettingsScreen(ScreenContext context) {
    super(context, "Settings", false);
  }

  private void press(SettingsModel.What what) {
    switch (what) {
      case TEXT ->
          choose("Text size", Choice.now(SettingsModel.TEXT, set().textPercent()), this::text);
      case LOOK -> choose("Look", Choice.now(SettingsModel.LOOKS, set().look()), this::look);
      case SCREEN -> open(() -> new CalibrateScreen(context));
      case SOUND -> open(() -> new SoundScreen(context));
      case UNITS ->
          choose("Units for new jobs", Choice.now(SettingsModel.UNITS, set().units()), this::units);
      case SCANNER -> open(() -> new ScannerScreen(context));
      case CAMERA -> open(() -> new CameraScreen(context));
      case PHONES -> phones();
      case COPY -> copy();
      case REPORT -> new ReportSaving(context).ask();
      case ABOUT -> open(() -> new AboutScreen(context));
      case SHOP -> new WorkplaceAsking(context, this::change).where();
      case BENCH -> new WorkplaceAsking(context, this::change).bench();
    }
  }

  /** They join a job, and end with it. */
  private void phones() {
    if (context.job().isPresent()) {
      context.navigator().show(ScreenId.PHONES);
    } else {
      context.say("Open a job first: phones join a job.");
    }
  }

  private Settings set() {
    return context.settings();
  }

  private <T> void choose(String title, List<Choice<T>> choices, Consumer<T> done) {
    open(() -> new ChoiceScreen<>(context, title, choices, done));
  }

  private Path shop() {
    return context.settings().shop();
  }

  private void text(int percent) {
    change(context.settings().withTextPercent(percent));
  }

  private void look(Appearance look) {
    change(context.settings().withLook(look));
  }

  private void units(UnitSystem units) {
    change(context.settings().withUnits(units));
  }

  private void copy() {
    if (context.settings().secondCopy().isEmpty()) {
      copyFolder();
      return;
    }
    Runnable other = this::copyFolder;
    Runnable none = () -> change(context.settings().withSecondCopy(Optional.empty()));
    List<Choice<Runnable>> choices =
        List.of(
            new Choice<>(other, "Another folder", "on a USB drive or another disk"),
            new Choice<>(none, "No more copies", "what was copied stays where it is"));
    choose("Copy each job when work stops", choices, Runnable::run);
  }

  private void copyFolder() {
    new DriveFolder(context, "Folder for the copies", shop(), this::copyTo).ask();
  }

  private void copyTo(Path folder) {
    Optional<String> fault = SecondCopies.findFault(shop(), folder);
    if (fault.isPresent()) {
      context.say(fault.get());
    } else {
      change(context.settings().withSecondCopy(Optional.of(folder)));
    }
  }

  private void change(Settings changed) {
    context.change(changed);
    refresh();
  }

  @Override
  protected List<Region> rows() {
    return SettingsModel.lines(context.settings()).stream()
        .map(line -> key(line.heading(), List.of(line.now()), () -> press(line.what())))
        .toList();
  }
}
