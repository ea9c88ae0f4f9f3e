package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.WeightPlans;
import wherefrom.job.measure.WeightSet;
import wherefrom.job.numbers.BobWeight;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.shop.MachineShop;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.WordsScreen;
import wherefrom.ui.controls.TagKey;

/** Matched sets, what to take off which, and the bob weight for the machine shop. */
public final class WeightsScreen extends ListPage {
  private final Foot foot;

  public WeightsScreen(ScreenContext context) {
    super(context, "Weights");
    TagKey tag = tag(this::toSlip);
    tag.setWords("Put it on the slip", touch().brief("bob weight for the machine shop", ""));
    foot = new Foot(context, tag, KeyRow.of(context));
    layOut(foot);
  }

  @Override
  protected void refresh() {
    super.refresh();
    foot.offerTag(bob().slip().isPresent());
  }

  private BobWeight bob() {
    return new BobWeight(context.getJob());
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    WeightPlans.all().forEach(plan -> rows.add(set(plan)));
    boolean used = BobWeight.isUsed(context.state().layout());
    for (BobWeight.Typed what : used ? BobWeight.Typed.values() : new BobWeight.Typed[0]) {
      String typed = bob().text(what);
      String heading = Words.capital(what.words());
      rows.add(key(heading, typed.isEmpty() ? usual(what) : typed, () -> type(what)));
    }
    rows.add(told("Bob weight", bob().sentence()));
    return rows;
  }

  private String usual(BobWeight.Typed what) {
    return switch (what) {
      case SHARE ->
          BobWeight.hasUsualShare(context.state().layout())
              ? BobWeight.USUAL_SHARE + ": common practice, no source"
              : "not typed yet: ask the machinist";
      case RODS -> "as many as share a pin";
      case LOCKS, OIL -> "none typed: 0 g";
      default -> "not typed yet";
    };
  }

  private Region set(ReadingPlan plan) {
    WeightSet set = WeightSet.of(context.state(), plan);
    String line =
        set.members().isEmpty()
            ? "none weighed: scan or choose it under Measure"
            : set.members().size() + " weighed, " + set.countHeavier() + " to lighten";
    return key(
        plan.title(),
        touch().brief(line, ""),
        () -> open(() -> new WordsScreen(context, plan.title(), lines(set))));
  }

  private static List<WordsScreen.Paragraph> lines(WeightSet set) {
    return set.members().stream()
        .map(
            one -> new WordsScreen.Paragraph(one.where() + ": " + one.words(), one.weight().text()))
        .toList();
  }

  private void type(BobWeight.Typed what) {
    open(
        () ->
            new wherefrom.ui.app.TextEntryScreen(
                context,
                Words.capital(what.words()),
                bob().text(what),
                typed -> keep(what, typed)));
  }

  private void keep(BobWeight.Typed what, String typed) {
    context.attempt(
        () -> {
          if (bob().set(what, typed) instanceof FigureOutcome.Refused refused) {
            context.fail(refused.sentence());
          }
        });
    context.navigator().changed();
  }

  private void toSlip() {
    bob().slip().ifPresent(words -> context.attempt(() -> toSlip(words)));
    context.navigator().changed();
  }

  private void toSlip(String words) {
    MachineShop shop = new MachineShop(context.getJob());
    MachineShop.Answer came =
        shop.add(MachineShop.NEW_VISIT, "crankshaft", 1, words, "", "", false);
    context.say(
        came instanceof MachineShop.Answer.Refused refused
            ? refused.sentence()
            : "On the slip: " + words + ".");
  }
}
