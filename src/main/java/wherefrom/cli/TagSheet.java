package wherefrom.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import wherefrom.files.Outgoing;
import wherefrom.job.print.Face;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.print.PrintOutcome;
import wherefrom.job.print.PrintSetup;
import wherefrom.job.print.TagPrinting;

/**
 * A sheet of tags that a call asks for. Its numbers are taken before it goes out, so that no other
 * bench makes a sheet of the same; where it cannot go out, they are given back.
 */
final class TagSheet {
  private final OpenedJob bench;
  private final Call call;
  private final PrintSetup setup;
  private final TagPrinting printing;

  TagSheet(OpenedJob bench, Call call, PrintSetup setup) {
    this.bench = bench;
    this.call = call;
    this.setup = setup;
    this.printing = new TagPrinting(bench.job());
  }

  private boolean isTestPage() {
    return call.find("--test-page").isPresent();
  }

  /** What is to be printed, as the job is now. */
  PrintOrder order() throws BadInput {
    if (isTestPage()) {
      return PrintOrder.testPage(setup);
    }
    List<Face> faces = new TagWishes(bench, call).faces(printing);
    return PrintOrder.of(bench.state().name(), faces, setup);
  }

  /** The pages of one attempt, what they are, and the step that logs them; 0 for none. */
  private record Pages(ByteArrayOutputStream pdf, PrintOutcome.Printed printed, long step) {}

  /** Carries what the call got wrong through the writing of the file. */
  private static final class Refused extends IOException {
    private static final long serialVersionUID = 1;
    private final transient BadInput why;

    Refused(BadInput why) {
      super(why);
      this.why = why;
    }
  }

  /**
   * Logs the sheet as printed and writes it. It is logged once the file is open, for then little
   * can go wrong.
   *
   * @throws IOException with a plain sentence where it could not go out; it does not count then
   */
  PrintOutcome.Printed make(Outlet outlet) throws BadInput, IOException {
    List<Pages> made = new ArrayList<>();
    try {
      outlet.write(
          out -> {
            made.add(logged());
            made.get(0).pdf().writeTo(out);
          });
    } catch (Refused e) {
      throw e.why;
    } catch (IOException e) {
      made.forEach(this::giveBack);
      throw e;
    }
    return made.get(0).printed();
  }

  private Pages logged() throws IOException {
    Pages[] made = new Pages[1];
    try {
      bench.asOne(() -> made[0] = taken());
    } catch (BadInput e) {
      throw new Refused(e);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    return made[0];
  }

  private Pages taken() throws BadInput {
    PrintOrder order = order();
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    PrintOutcome outcome = save(order, pdf);
    if (outcome instanceof PrintOutcome.Refused refused) {
      throw new BadInput(String.join(" ", refused.sentences()));
    }
    long step = printing.printed(order.faces(), setup.stock());
    return new Pages(pdf, (PrintOutcome.Printed) outcome, step);
  }

  private void giveBack(Pages pages) {
    if (pages.step() > 0) {
      printing.neverCame(pages.step());
    }
  }

  /** A page that cannot be drawn is carried out of the act, of which nothing is kept then. */
  private PrintOutcome save(PrintOrder order, ByteArrayOutputStream pdf) {
    try {
      return call.services().printer().save(order, Outgoing.into(pdf));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
