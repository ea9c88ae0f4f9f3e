package wherefrom.ui.money;

import java.util.function.Consumer;
import java.util.function.Function;
import wherefrom.job.money.Budget;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.OpensPad;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TouchKey;

/** What may be spent, what is set aside for what is found later, and the currency. */
public final class BudgetScreen extends Page implements OpensPad {
  private final MoneyModel model;
  private final TouchKey limit;
  private final TouchKey contingency;
  private final TouchKey currency;
  private final FitText words;

  BudgetScreen(ScreenContext context, MoneyModel model) {
    super(context, "Budget");
    this.model = model;
    limit = touch().key("", this::askLimit).left();
    contingency = touch().key("", this::askContingency).left();
    currency = touch().key("", this::askCurrency).left();
    words = touch().text("");
    lay(Panes.column(context.scale(), limit, contingency, currency, words, Panes.space()));
  }

  @Override
  protected void refresh() {
    Budget budget = model.budget();
    limit.setWords(
        "Budget: " + (budget.limit().cents() == 0 ? "not set" : model.text(budget.limit())));
    contingency.setWords(
        "Set aside for surprises: "
            + (budget.currency().isEmpty() ? "15" : budget.contingencyPercent())
            + " %");
    currency.setWords("Currency: " + model.tender().letters());
    words.setWords(
        context
            .touch()
            .brief(
                "Many set aside 15 to 20 % (no published source). Is the total above"
                    + " a good used engine's price? Think again first.",
                "Many set aside 15 to 20 % (no published source)."));
  }

  @Override
  public void openPad() {
    askLimit();
  }

  private void askLimit() {
    open(
        () ->
            NumberEntryScreen.size(
                context,
                "Budget",
                "How much may be spent, in " + model.tender().letters() + "?",
                10,
                keep(model::setBudget)));
  }

  private void askContingency() {
    open(
        () ->
            NumberEntryScreen.digits(
                context,
                "Set aside for surprises",
                "What percent of all costs?",
                3,
                keep(model::setContingency)));
  }

  private void askCurrency() {
    open(
        () ->
            new TextEntryScreen(
                context,
                "Currency: three letters",
                "",
                typed ->
                    keep(model::setCurrency).accept(typed.toUpperCase(java.util.Locale.ROOT))));
  }

  private Consumer<String> keep(Function<String, String> deed) {
    return typed -> {
      context.attempt(() -> context.say(deed.apply(typed)));
      context.navigator().changed();
    };
  }
}
