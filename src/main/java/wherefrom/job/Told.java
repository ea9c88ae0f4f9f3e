package wherefrom.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.job.entry.SlotUnknown;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.size.CutSurface;

/**
 * What rules and sizes are worked out from, kept as it is told: the work that was done, the answers
 * to checks, the sizes of new parts and the cuts that are to come.
 */
public final class Told {
  private static final EntryFold<Told> ANSWERS =
      EntryFold.<Told>none()
          .at(CheckAnswered.class, (told, it, at) -> told.answers.put(it.check(), at));

  /** The work that an entry tells of itself; other work is the machine shop's. */
  private static final EntryTable<Told, Optional<Change>> WORK =
      EntryRows.<Told, Optional<Change>>none()
          .on(ChangeMade.class, (told, made) -> Optional.of(made.change()))
          .on(SlotUnknown.class, (told, stray) -> Optional.of(told.stray(stray)))
          .others(Optional.empty());

  private final EngineJob job;
  private final ShopChanges shop;
  private final List<MadeChange> work = new ArrayList<>();
  private final List<Change> workOfShop = new ArrayList<>();
  private final Map<String, LoggedEntry> answers = new HashMap<>();
  private final NewSizes news = new NewSizes();
  private final ComingCuts coming;
  private final List<MadeChange> cutsBefore = new ArrayList<>();

  Told(EngineJob job) {
    this.job = job;
    shop = new ShopChanges(job);
    coming = new ComingCuts(job);
  }

  /** Goes on from a life before: what was cut stays cut, and a part keeps the size it has. */
  void goOn(Told before) {
    cutsBefore.addAll(before.cutsBefore);
    before.work.stream().filter(made -> isCut(made.change().kind())).forEach(cutsBefore::add);
    news.goOn(before.news);
  }

  /** Takes over all that another job of the same engine was told, as it is now. */
  void takeOver(Told other) {
    shop.takeOver(other.shop);
    work.addAll(other.work);
    workOfShop.addAll(other.workOfShop);
    answers.putAll(other.answers);
    news.goOn(other.news);
    coming.takeOver(other.coming);
    cutsBefore.addAll(other.cutsBefore);
  }

  private static boolean isCut(ChangeKind kind) {
    return kind == ChangeKind.CRANK_CHANGED || CutSurface.find(kind).isPresent();
  }

  /** What was cut in lives before. */
  List<MadeChange> cutsBefore() {
    return List.copyOf(cutsBefore);
  }

  /** Takes in the next entry; what work is done with it. */
  List<Change> take(LoggedEntry logged) {
    ANSWERS.take(this, logged);
    news.take(logged.entry());
    coming.take(logged);
    List<Change> done = changes(logged);
    done.forEach(change -> work.add(new MadeChange(logged.sequence(), change, true, 0)));
    return done;
  }

  private List<Change> changes(LoggedEntry logged) {
    return WORK.of(this, logged.entry()).map(List::of).orElseGet(() -> ofShop(logged));
  }

  private Change stray(SlotUnknown stray) {
    Place home = job.getPart(stray.item()).part().home();
    return Change.noting(ChangeKind.SLOT_UNKNOWN, home.key(), stray.reason());
  }

  private List<Change> ofShop(LoggedEntry logged) {
    List<Change> back = shop.take(logged);
    workOfShop.addAll(back);
    return back;
  }

  /** The changes that were recorded, and those that came back from the machine shop, in order. */
  public List<MadeChange> work() {
    return Collections.unmodifiableList(work);
  }

  /** The changes that came back from the machine shop alone. */
  public List<Change> workOfShop() {
    return List.copyOf(workOfShop);
  }

  /** The latest answer to a check. */
  Optional<LoggedEntry> findAnswer(String check) {
    return Optional.ofNullable(answers.get(check));
  }

  NewSizes news() {
    return news;
  }

  ComingCuts coming() {
    return coming;
  }
}
