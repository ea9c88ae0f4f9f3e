package wherefrom.ui.money;

import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.money.Budget;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TouchKey;

/** What may be spent, what is set aside for what is found later, and the currency. */
public final class BudgetScreen implements Screen {
  private final Desk desk;
  private final MoneyModel model;
  private final TouchKey limit;
  private final TouchKey contingency;
  private final TouchKey currency;
  private final FitText words;
  private final VBox view;

  BudgetScreen(Desk desk, MoneyModel model) {
    this.desk = desk;
    this.model = model;
    limit = desk.touch().primary("", this::askLimit).left();
    contingency = desk.touch().primary("", this::askContingency).left();
    currency = desk.touch().primary("", this::askCurrency).left();
    words = desk.touch().text("");
    view = Panes.column(desk.scale(), limit, contingency, currency, words, Panes.space());
  }

  @Override
  public String title() {
    return "Budget";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    Budget budget = model.budget();
    limit.setWords(
        "Budget: " + (budget.limit().cents() == 0 ? "not set" : model.text(budget.limit())));
    contingency.setWords(
        "Set aside for surprises: "
            + (budget.currency().isEmpty() ? "15" : budget.contingencyPercent())
            + " %");
    currency.setWords("Currency: " + model.tender().letters());
    words.setWords(
        desk.touch()
            .brief(
                "15 to 20 % is a common reserve (from memory, no source). Is the total above"
                    + " a good used engine's price? Think again first.",
                "15 to 20 % is common (from memory, no source)."));
  }

  @Override
  public void changed() {
    shown();
  }

  private void askLimit() {
    desk.navigator()
        .open(
            () ->
                NumberEntryScreen.size(
                    desk,
                    "Budget",
                    "How much may be spent, in " + model.tender().letters() + "?",
                    10,
                    keep(model::setBudget)));
  }

  private void askContingency() {
    desk.navigator()
        .open(
            () ->
                NumberEntryScreen.digits(
                    desk,
                    "Set aside for surprises",
                    "What percent of all costs?",
                    3,
                    keep(model::setContingency)));
  }

  private void askCurrency() {
    desk.navigator()
        .open(
            () ->
                new TextEntryScreen(
                    desk,
                    "Currency: three letters",
                    "",
                    typed ->
                        keep(model::setCurrency).accept(typed.toUpperCase(java.util.Locale.ROOT))));
  }

  private Consumer<String> keep(Function<String, String> deed) {
    return typed -> {
      desk.attempt(() -> desk.say(deed.apply(typed)));
      desk.navigator().changed();
    };
  }
}
