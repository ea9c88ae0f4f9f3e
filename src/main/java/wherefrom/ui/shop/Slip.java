package wherefrom.ui.shop;

import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import wherefrom.files.FileNames;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.print.Unprintable;
import wherefrom.job.shop.ShopSlip;
import wherefrom.job.shop.ShopVisit;
import wherefrom.quantity.HomeCountry;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.files.Saving;
import wherefrom.ui.record.Paper;
import wherefrom.ui.record.PaperScreen;

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

  /** As it comes out of the printer; from there it is printed. */
  void print() {
    use(
        filled -> {
          String title = "Machine shop, visit " + filled.visit().number();
          Paper paper =
              new Paper(
                  title,
                  file(filled),
                  out -> write(filled, out),
                  () -> unprintable(filled.visit()));
          context.navigator().open(() -> new PaperScreen(context, paper));
        });
  }

  private static String file(Filled filled) {
    return FileNames.of(filled.job(), "slip visit " + filled.visit().number(), ".pdf");
  }

  private Optional<String> unprintable(ShopVisit visit) {
    return Unprintable.warning(context.services().printer(), context.state().name(), visit);
  }

  /** What of it does not print, in a sentence behind another one. */
  private String warning(ShopVisit visit) {
    return unprintable(visit).map(said -> " " + said).orElse("");
  }

  void save() {
    use(
        filled ->
            new Saving<>(
                    context,
                    "Where to save the slip",
                    file(filled),
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
    PaperSize paper = PaperSize.usual(HomeCountry.of(Locale.getDefault(), context.state().units()));
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
