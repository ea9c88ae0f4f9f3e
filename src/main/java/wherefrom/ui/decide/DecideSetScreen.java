package wherefrom.ui.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.inspection.Decision;
import wherefrom.job.decide.Deciding;
import wherefrom.job.decide.Proposal;
import wherefrom.parts.PartKind;
import wherefrom.text.Words;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Reasons;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/** All used parts of one kind: each a key to its own decision, and one decision for the set. */
public final class DecideSetScreen implements Screen, Scannable {
  private final Desk desk;
  private final PartKind kind;
  private final DecideModel model;
  private final Pager<Region> rows;
  private final VBox view;

  public DecideSetScreen(Desk desk, PartKind kind) {
    this.desk = desk;
    this.kind = kind;
    model = new DecideModel(desk.getJob());
    rows = Pager.list(desk.touch(), row -> row);
    view =
        Panes.column(
            desk.scale(),
            rows,
            Tiles.row(
                desk.scale(),
                all(Decision.REUSE, "Reuse those proposed"),
                all(Decision.MACHINE, "Machine all"),
                all(Decision.REPLACE, "Replace all")));
  }

  private TouchKey all(Decision decision, String whole) {
    String brief = Words.capital(decision.word());
    return desk.touch().primary(desk.touch().brief(whole, brief), () -> ask(decision));
  }

  @Override
  public String title() {
    return "Decide: " + kind.plural();
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    List<Region> lines = new ArrayList<>();
    proposal().ifPresent(set -> lines.addAll(rows(set)));
    model.lines(kind).forEach(line -> lines.add(row(line)));
    rows.refill(lines);
  }

  @Override
  public void changed() {
    shown();
  }

  private Optional<Deciding.SetProposal> proposal() {
    return model.proposeSet(kind);
  }

  /** The first part that calls for it, then what is done with sets: a row each. */
  private List<Region> rows(Deciding.SetProposal set) {
    Proposal.Reason first = set.reasons().get(0);
    Proposal.Reason last = set.reasons().get(set.reasons().size() - 1);
    int others = set.reasons().size() - 2;
    String more = others == 0 ? "" : " So for " + others + " more.";
    return List.of(
        told("Proposed for the set: " + set.decision().word(), first.sentence() + more, first),
        told(last.sentence(), "", last));
  }

  private Region told(String heading, String sentence, Proposal.Reason reason) {
    return ListRow.plain(
        desk.touch(), heading, List.of(sentence, "Source: " + reason.source() + "."));
  }

  private Region row(DecideModel.Line line) {
    String decided = line.decided().map(what -> "decided: " + what.word()).orElse("not decided");
    return ListRow.key(
        desk.touch(),
        line.part().home().figures() + ": " + decided,
        List.of(line.proposed() + ". " + line.why()),
        () -> open(line.part().item()));
  }

  private void open(int item) {
    desk.navigator().open(() -> new DecidePartScreen(desk, item));
  }

  @Override
  public void scan(String text) {
    ScannedPart.find(desk, text, DecideScreen.WANTED).ifPresent(this::open);
  }

  private void ask(Decision decision) {
    String title = String.format(Locale.ROOT, "Why %s the %s?", decision.word(), kind.plural());
    Reasons.ask(desk, title, DecideReasons.of(decision), words -> decide(decision, words));
  }

  private void decide(Decision decision, String reason) {
    desk.attempt(() -> desk.say(model.decideSet(kind, decision, reason)));
    desk.navigator().changed();
  }
}
