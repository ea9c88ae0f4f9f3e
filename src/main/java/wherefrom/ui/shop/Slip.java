package wherefrom.ui.shop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import wherefrom.files.FileNames;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.print.PrintOutcome;
import wherefrom.job.print.Unprintable;
import wherefrom.job.shop.ShopSlip;
import wherefrom.job.shop.ShopVisit;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.files.Saving;

/** The slip of a visit: to the printer, or as PDF into a folder. */
final class Slip {
  private final ScreenContext context;
  private final VisitModel model;

  Slip(ScreenContext context, VisitModel model) {
    this.context = context;
    this.model = model;
  }

  /** Through the system's printer dialog. */
  void print() {
    use(
        visit ->
            context.longWork(
                "Printing the slip",
                () -> print(visit),
                outcome -> {
                  context.say(said(outcome) + warning(visit));
                  context.navigator().changed();
                }));
  }

  private PrintOutcome print(ShopVisit visit) throws IOException {
    Path file = Files.createTempFile("slip-visit-" + visit.number() + "-", ".pdf");
    try {
      write(visit, Outgoing.replacing(file));
      String title = context.state().name() + ": machine shop, visit " + visit.number();
      return context.services().printer().printFile(file, title);
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
    return Unprintable.warning(context.services().printer(), context.state().name(), visit)
        .map(said -> " " + said)
        .orElse("");
  }

  void save() {
    use(
        visit ->
            new Saving<>(
                    context,
                    "Where to save the slip",
                    FileNames.of(context.state().name(), "slip visit " + visit.number(), ".pdf"),
                    out -> write(visit, out),
                    (file, written) ->
                        context.say(
                            "The slip is "
                                + file
                                + ". Print it at 100 % and send it along."
                                + warning(written)))
                .ask());
  }

  private ShopVisit write(ShopVisit visit, Outgoing out) throws IOException {
    PaperSize paper = PaperSize.usual(Locale.getDefault());
    context.services().reports().writeSlip(ShopSlip.of(context.state(), visit), paper, out);
    return visit;
  }

  private void use(Consumer<ShopVisit> deed) {
    Optional<ShopVisit> visit = model.visit();
    if (visit.isEmpty()) {
      context.say("Nothing is on the slip yet: scan the parts that go.");
    } else {
      deed.accept(visit.get());
    }
  }
}
