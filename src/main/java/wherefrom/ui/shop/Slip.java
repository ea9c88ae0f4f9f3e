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

  /** The visit with its slip, made on the window's thread: the job may change meanwhile. */
  private record Filled(ShopVisit visit, ShopSlip slip, String job) {}

  /** Through the system's printer dialog. */
  void print() {
    use(
        filled ->
            context.longWork(
                "Printing the slip",
                () -> print(filled),
                outcome -> {
                  context.say(said(outcome) + warning(filled.visit()));
                  context.navigator().changed();
                }));
  }

  private PrintOutcome print(Filled filled) throws IOException {
    int visit = filled.visit().number();
    Path file = Files.createTempFile("slip-visit-" + visit + "-", ".pdf");
    try {
      write(filled, Outgoing.replacing(file));
      String title = filled.job() + ": machine shop, visit " + visit;
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
        filled ->
            new Saving<>(
                    context,
                    "Where to save the slip",
                    FileNames.of(filled.job(), "slip visit " + filled.visit().number(), ".pdf"),
                    out -> write(filled, out),
                    (file, written) ->
                        context.say(
                            "The slip is "
                                + file
                                + ". Print it at 100 % and send it along."
                                + warning(written)))
                .ask());
  }

  private ShopVisit write(Filled filled, Outgoing out) throws IOException {
    PaperSize paper = PaperSize.usual(Locale.getDefault());
    context.services().reports().writeSlip(filled.slip(), paper, out);
    return filled.visit();
  }

  private void use(Consumer<Filled> deed) {
    Optional<ShopVisit> visit = model.visit();
    if (visit.isEmpty()) {
      context.say("Nothing is on the slip yet: scan the parts that go.");
    } else {
      ShopSlip slip = ShopSlip.of(context.getJob(), visit.get());
      deed.accept(new Filled(visit.get(), slip, context.state().name()));
    }
  }
}
