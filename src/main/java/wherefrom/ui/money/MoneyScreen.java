package wherefrom.ui.money;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.files.FileNames;
import wherefrom.files.Outgoing;
import wherefrom.files.TableFile;
import wherefrom.job.money.CostLine;
import wherefrom.job.money.MoneyCsv;
import wherefrom.quantity.HomeCountry;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.files.FilesScreen;
import wherefrom.ui.files.Saving;

/** Money: where the budget stands, and the cost lines. */
public final class MoneyScreen extends Page {
  private final MoneyModel model;
  private final CostLineAsking asking;
  private final FitText total;
  private final VBox bar = new VBox();
  private final Pager<Region> rows;

  public MoneyScreen(ScreenContext context) {
    super(context, "Money");
    model =
        new MoneyModel(
            context.getJob(), HomeCountry.of(Locale.getDefault(), context.state().units()));
    asking = new CostLineAsking(context, model);
    total = touch().heading("");
    rows = Pager.list(context.touch(), row -> row);
    lay(Panes.column(context.scale(), total, bar, rows, foot()));
  }

  private Foot foot() {
    return new Foot(
        context,
        touch().tag("Note a cost", "", asking::ask),
        KeyRow.of(
            context,
            new KeyRow.Act("What if?", this::whatIf),
            new KeyRow.Act("Prices", this::prices),
            new KeyRow.Act("Budget", this::budget),
            new KeyRow.Act("Export table…", this::out),
            new KeyRow.Act("Import table…", this::in)));
  }

  @Override
  protected void refresh() {
    total.setWords(model.sentence());
    bar.getChildren().setAll(new BudgetBar(context.scale(), model.budget()));
    boolean drawn = !touch().isLarge() && model.budget().total().cents() > 0;
    bar.setVisible(drawn);
    bar.setManaged(drawn);
    rows.refill(lines());
  }

  /** What the bar is made of, and what reuse saves. */
  private List<Region> sums() {
    List<String> sums =
        new ArrayList<>(
            model.sums().stream()
                .map(sum -> sum.words() + " " + model.tender().figure(sum.money()))
                .toList());
    if (!model.avoided().isEmpty()) {
      sums.add(model.avoided());
    }
    return sums.isEmpty()
        ? List.of()
        : List.of(ListRow.told(touch(), "The total", String.join(" · ", sums)));
  }

  private List<Region> lines() {
    List<Region> lines = new ArrayList<>();
    for (CostLine line : model.lines()) {
      String note = line.note().isEmpty() ? "" : ". " + line.note();
      String plan = line.plan() == 0 ? "" : ", for plan " + line.plan();
      lines.add(
          ListRow.key(
              context.touch(),
              Words.capital(line.what().words()) + ": " + model.text(line.amount()),
              List.of(line.state().words() + plan + note),
              () -> asking.change(line)));
    }
    lines.addAll(sums());
    if (lines.isEmpty()) {
      lines.add(
          ListRow.told(
              context.touch(),
              "No cost is noted",
              "Type part prices. Note what is quoted and paid."));
    }
    return lines;
  }

  private void whatIf() {
    open(() -> new WhatIfScreen(context, model));
  }

  private void prices() {
    open(() -> new PricesScreen(context, model));
  }

  private void budget() {
    open(() -> new BudgetScreen(context, model));
  }

  private void out() {
    byte[] table = new MoneyCsv(context.getJob()).write().getBytes(StandardCharsets.UTF_8);
    new Saving<>(
            context,
            "Where to save the table",
            FileNames.of(context.state().name(), "money", ".csv"),
            out -> write(table, out),
            (file, written) -> context.say("The table is " + file + "."))
        .ask();
  }

  private static byte[] write(byte[] table, Outgoing out) throws IOException {
    out.write(stream -> stream.write(table));
    return table;
  }

  private void in() {
    open(() -> FilesScreen.file(context, "Which table?", List.of(".csv"), this::read));
  }

  private void read(Path file) {
    context.attempt(
        () -> {
          int before = model.lines().size();
          String text = TableFile.read(file);
          context.say(
              new MoneyCsv(context.getJob())
                  .read(text)
                  .orElseGet(() -> "Lines added: " + (model.lines().size() - before) + "."));
        });
    context.navigator().changed();
  }
}
