package wherefrom.ui.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingCheck;
import wherefrom.job.timing.TimingSetting;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.TagKey;
import wherefrom.workings.timing.Comparison;

/** One cylinder's timing beside the cam card; what keeps it from being told stands first. */
public final class CylinderScreen extends ListPage {
  private static final String UNCERTAINTY =
      "The figure after ± is the standard uncertainty. Your engine's service information and cam"
          + " card decide.";

  /** What keeps the cylinder from being told, and what answers it. */
  private record Open(String name, String stands, Runnable press) {}

  private final int cylinder;
  private final TimingBook book;
  private final TimingCheck check;
  private final TagKey tag;
  private final Foot foot;

  CylinderScreen(ScreenContext context, int cylinder) {
    super(context, "");
    this.cylinder = cylinder;
    book = new TimingBook(context.getJob());
    check = new TimingCheck(book);
    tag = tag(() -> open().stream().findFirst().ifPresent(open -> open.press().run()));
    foot =
        new Foot(
            context,
            tag,
            KeyRow.of(
                context,
                act(touch().brief("Intake readings", "Intake"), () -> lobe(ValveSide.INTAKE)),
                act(touch().brief("Exhaust readings", "Exhaust"), () -> lobe(ValveSide.EXHAUST))));
    layOut(foot);
  }

  private void lobe(ValveSide side) {
    open(() -> new LobeScreen(context, new ValveSpot(cylinder, side)));
  }

  /** First what holds for every lobe, then the lobes. */
  private List<Open> open() {
    List<Open> open = new ArrayList<>();
    for (TimingSetting setting : check.unknown()) {
      open.add(
          new Open(
              setting.brief(), "not known yet", () -> SettingAsking.ask(context, book, setting)));
    }
    if (open.isEmpty()) {
      for (ValveSide side : ValveSide.values()) {
        check
            .missing(new ValveSpot(cylinder, side))
            .ifPresent(
                missing ->
                    open.add(
                        new Open(
                            Words.capital(side.word()) + " readings", missing, () -> lobe(side))));
      }
    }
    return open;
  }

  private void source() {
    open(
        () ->
            new TextEntryScreen(
                context,
                "Cam card: where its figures come from",
                book.cardSource(),
                words -> SettingAsking.keep(context, () -> book.cardSource(words))));
  }

  private void card(Comparison each) {
    open(
        () ->
            NumberEntryScreen.signed(
                context,
                "Card: " + each.value().words(),
                "In degrees, as on the card. Events: after top dead center, minus before it."
                    + " After bottom dead center add 180.",
                typed -> SettingAsking.keep(context, () -> book.card(each.value(), typed))));
  }

  @Override
  public String title() {
    return "Timing, cylinder " + cylinder;
  }

  @Override
  protected void refresh() {
    super.refresh();
    Optional<Open> next = open().stream().findFirst();
    foot.offerTag(next.isPresent());
    next.ifPresent(open -> tag.setWords("Next: " + Words.small(open.name()), ""));
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    for (Open open : open()) {
      rows.add(spare(open.name(), open.stands(), open.press()));
    }
    List<Comparison> compared = new ArrayList<>(check.compare(cylinder));
    compared.sort(Comparator.comparing(each -> !each.differs()));
    compared.forEach(each -> rows.add(row(each)));
    rows.add(
        spare(
            "Cam card: " + (book.cardSource().isEmpty() ? "not said yet" : book.cardSource()),
            "where its figures come from",
            this::source));
    if (!compared.isEmpty()) {
      rows.add(told("At " + check.atLift() + " of lift", UNCERTAINTY));
    }
    return rows;
  }

  private Region row(Comparison each) {
    String name = Words.capital(each.value().words());
    if (touch().isLarge()) {
      return key(
          name,
          List.of(abbreviated(each.foundWords()), each.brief().replace(" deg", "°")),
          () -> card(each));
    }
    String beside = each.card().isPresent() ? "Card: " + each.cardWords() + ". " : "";
    return key(name + ": " + each.foundWords(), beside + each.verdict(), () -> card(each));
  }

  /** As cam cards write it, where letters are large: {@code 6.9 ± 0.4° ATDC}. */
  static String abbreviated(String words) {
    return words
        .replaceFirst("(\\S+) deg(.*) ± (\\S+) deg$", "$1 ± $3°$2")
        .replace("after top dead center", "ATDC")
        .replace("before top dead center", "BTDC")
        .replace("after bottom dead center", "ABDC")
        .replace("before bottom dead center", "BBDC");
  }
}
