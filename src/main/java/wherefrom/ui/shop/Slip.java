package wherefrom.ui.shop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import wherefrom.files.FileNames;
import wherefrom.files.Outgoing;
import wherefrom.job.print.PrintOutcome;
import wherefrom.job.print.Unprintable;
import wherefrom.job.shop.ShopSlip;
import wherefrom.job.shop.ShopVisit;
import wherefrom.ui.app.Desk;
import wherefrom.ui.files.Saving;

/** The slip of a visit: to the printer, or as PDF into a folder. */
final class Slip {
  private final Desk desk;
  private final VisitModel model;

  Slip(Desk desk, VisitModel model) {
    this.desk = desk;
    this.model = model;
  }

  /** Through the system's printer dialog. */
  void print() {
    use(
        visit ->
            desk.longWork(
                "Printing the slip",
                () -> print(visit),
                outcome -> {
                  desk.say(said(outcome) + warning(visit));
                  desk.navigator().changed();
                }));
  }

  private PrintOutcome print(ShopVisit visit) throws IOException {
    Path file = Files.createTempFile("slip-visit-" + visit.number() + "-", ".pdf");
    try {
      write(visit, Outgoing.replacing(file));
      String title = desk.state().name() + ": machine shop, visit " + visit.number();
      return desk.equipment().printer().printFile(file, title);
    } finally {
      Files.delete(file);
    }
  }

  private static String said(PrintOutcome outcome) {
    return outcome.match(
        printed -> "The slip is printed: send it along.",
        cancelled -> "Not printed.",
        refused -> String.join(" ", refused.sentences()));
  }

  /** What of it does not print, in a sentence behind another one. */
  private String warning(ShopVisit visit) {
    return Unprintable.warning(desk.equipment().printer(), desk.state().name(), visit)
        .map(said -> " " + said)
        .orElse("");
  }

  void save() {
    use(
        visit ->
            new Saving<>(
                    desk,
                    "Where to save the slip",
                    FileNames.of(desk.state().name(), "slip visit " + visit.number(), ".pdf"),
                    out -> write(visit, out),
                    (file, written) ->
                        desk.say(
                            "The slip is "
                                + file
                                + ". Print it at 100 % and send it along."
                                + warning(written)))
                .ask());
  }

  private ShopVisit write(ShopVisit visit, Outgoing out) throws IOException {
    desk.equipment().reports().writeSlip(ShopSlip.of(desk.state(), visit), out);
    return visit;
  }

  private void use(Consumer<ShopVisit> deed) {
    Optional<ShopVisit> visit = model.visit();
    if (visit.isEmpty()) {
      desk.say("Nothing is on the slip yet: scan the parts that go.");
    } else {
      deed.accept(visit.get());
    }
  }
}
