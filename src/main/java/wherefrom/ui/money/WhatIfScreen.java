package wherefrom.ui.money;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.job.money.CostItem;
import wherefrom.job.money.PlanCost;
import wherefrom.rules.consequence.Change;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;

/** What a change would cost with all that it drags along, before it is planned. */
public final class WhatIfScreen extends Page {
  private final MoneyModel model;
  private final FitText words;
  private final Pager<Region> rows;
  private final TagKey change;
  private Optional<Change> chosen = Optional.empty();

  WhatIfScreen(ScreenContext context, MoneyModel model) {
    super(context, "");
    this.model = model;
    words = touch().heading("");
    rows = Pager.list(context.touch(), row -> row);
    change = touch().tag("Choose a change", "", this::choose);
    lay(
        Panes.column(
            context.scale(),
            words,
            rows,
            new Foot(
                context,
                change,
                KeyRow.of(
                    context,
                    new KeyRow.Act(
                        "Prices", () -> open(() -> new PricesScreen(context, model)))))));
  }

  @Override
  public String title() {
    return chosen
        .map(one -> touch().brief("What if: " + one.words(), Words.capital(one.words()) + "?"))
        .orElse("What if?");
  }

  @Override
  protected void refresh() {
    List<Region> lines = new ArrayList<>();
    if (chosen.isEmpty()) {
      words.setWords(touch().brief(model.sentence(), model.brief()));
      lines.add(
          ListRow.told(
              context.touch(),
              "Nothing is recorded here",
              "Choose a change. It is priced at the prices typed."));
    } else {
      PlanCost effect = model.effect(chosen.get());
      words.setWords(touch().brief(effect.total(), effect.briefTotal()));
      effect.lines().forEach(item -> lines.add(row(item, effect)));
      effect.perhaps().forEach(item -> lines.add(row("Perhaps ", item, ", if its check fails")));
      if (lines.isEmpty()) {
        lines.add(
            ListRow.told(
                context.touch(),
                "Nothing to buy follows from it",
                "The work itself is noted as a cost."));
      }
    }
    rows.refill(lines);
  }

  /** What is counted already adds nothing: no plus, and it says so. */
  private Region row(CostItem item, PlanCost effect) {
    String counted = effect.counted().getOrDefault(item.what(), "");
    return counted.isEmpty() ? row("+", item, "") : row("", item, counted, "");
  }

  private Region row(String sign, CostItem item, String more) {
    return row(sign, item, item.priced() ? model.text(item.amount()) : "no price typed", more);
  }

  private Region row(String sign, CostItem item, String amount, String more) {
    return ListRow.plain(
        context.touch(),
        sign + item.pieces() + " " + item.what().words() + ": " + amount,
        List.of(touch().brief(Words.capital(item.why()) + more, "")));
  }

  private void choose() {
    List<Choice<Change>> choices = new ArrayList<>();
    model.changes().forEach(each -> choices.add(new Choice<>(each, each.words(), "")));
    open(
        () ->
            new ChoiceScreen<>(
                context,
                "What would be changed?",
                choices,
                each -> {
                  chosen = Optional.of(each);
                  context.navigator().changed();
                }));
  }
}
