package wherefrom.ui.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.layout.Region;
import wherefrom.inspection.Decision;
import wherefrom.job.decide.Deciding.SetProposal;
import wherefrom.job.decide.Machining;
import wherefrom.job.decide.Proposal;
import wherefrom.parts.PartKind;
import wherefrom.text.UsualWords;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ReasonAsking;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.WordsScreen;
import wherefrom.ui.controls.Either;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.PictureKey;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.engine.EnginePages;
import wherefrom.ui.subject.SubjectPictures;

/**
 * All used parts of one kind on the drawn engine, each with its own decision, and one decision for
 * the set. Where large text leaves the drawing no room they are listed.
 */
public final class DecideSetScreen extends Page implements Scannable {
  private final PartKind kind;
  private final DecideModel model;
  private final DecideIndex index;
  private final EnginePages pages;
  private final EngineView engine;
  private final Pager<DecideModel.Line> list;
  private final TagKey tag;
  private final KeyRow keys;

  public DecideSetScreen(ScreenContext context, PartKind kind) {
    super(context, "Decide: " + kind.plural());
    this.kind = kind;
    model = new DecideModel(context.getJob());
    index = new DecideIndex(context, model, kind, this::decide);
    pages = new EnginePages(context, index);
    engine = pages.view();
    list = Pager.list(touch(), this::row);
    tag = tag(() -> ask(first()));
    keys = KeyRow.of(context);
    Either parts = new Either(room -> engine.hasRoom(room.width(), room.height()) ? engine : list);
    lay(Panes.column(context.scale(), parts, new Foot(context, tag, keys)));
  }

  private Optional<SetProposal> proposal() {
    return model.proposeSet(kind);
  }

  /** What the tag does: what is proposed for the set, else reuse where that is proposed. */
  private Decision first() {
    return proposal().map(SetProposal::decision).orElse(Decision.REUSE);
  }

  private String words(Decision decision) {
    return switch (decision) {
      case REUSE -> touch().brief("Reuse those proposed", "Reuse proposed");
      case MACHINE -> "Machine all";
      case REPLACE -> "Replace all";
    };
  }

  @Override
  public String aside() {
    return model.undecided(kind) + " undecided";
  }

  @Override
  protected void refresh() {
    pages.show(engine);
    list.refill(model.lines(kind));
    String more = proposal().isPresent() ? "proposed for the set" : model.proposed(kind);
    tag.setWords(words(first()), touch().brief(more, ""));
    List<KeyRow.Act> acts = new ArrayList<>();
    for (Decision decision : Decision.values()) {
      acts.add(act(words(decision), () -> ask(decision)));
    }
    proposal().ifPresent(set -> acts.add(act("Why", () -> open(() -> why(set)))));
    keys.setActs(acts);
  }

  private Region row(DecideModel.Line line) {
    String decided = line.decided().map(what -> what.word()).orElse("undecided");
    return PictureKey.of(
        touch(),
        Optional.of(SubjectPictures.of(context, line.part().home())),
        line.part().home().brief() + ": " + decided,
        touch().brief(line.proposed(), ""),
        OptionalDouble.empty(),
        () -> decide(line.part().item()));
  }

  /** The parts that call for it, then what is done with sets. */
  private WordsScreen why(SetProposal set) {
    List<WordsScreen.Paragraph> lines = new ArrayList<>();
    for (Proposal.Reason reason : set.reasons()) {
      lines.add(new WordsScreen.Paragraph(reason.sentence(), Words.source(reason.source()) + "."));
    }
    return new WordsScreen(context, "Why " + set.decision().word() + " the set", lines);
  }

  private void decide(int item) {
    open(() -> new DecidePartScreen(context, item));
  }

  @Override
  public void scan(Scanned scanned) {
    index.scan(scanned);
  }

  private void ask(Decision decision) {
    String title = String.format(Locale.ROOT, "Why %s the %s?", decision.word(), kind.plural());
    Optional<String> objection = Machining.objection(decision, kind);
    if (objection.isPresent()) {
      context.say(objection.get());
      return;
    }
    UsualWords reasons = model.reasons(kind, decision);
    ReasonAsking.ask(context, title, reasons, words -> decide(decision, words));
  }

  private void decide(Decision decision, String reason) {
    context.attempt(() -> context.say(model.decideSet(kind, decision, reason)));
    context.navigator().changed();
  }
}
