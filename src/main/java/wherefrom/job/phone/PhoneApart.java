package wherefrom.job.phone;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import wherefrom.job.EngineJob;
import wherefrom.job.JobPartNames;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.takeapart.NextOut;
import wherefrom.job.takeapart.OffFirst;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.job.takeapart.TakeApart;
import wherefrom.parts.Part;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Cue;
import wherefrom.rules.Verdict;

/** Taking apart at a phone. */
final class PhoneApart {
  private final OpenJob job;
  private final TakeApart apart;
  private final Supplier<OutOrder> order;
  private final Set<Integer> later = new HashSet<>();

  PhoneApart(OpenJob job, Supplier<OutOrder> order) {
    this.job = job;
    this.apart = new TakeApart(job);
    this.order = order;
  }

  private EngineJob state() {
    return job.state();
  }

  private Optional<PartRecord> next() {
    return new NextOut(state(), order.get(), later).find();
  }

  private String named(Part part) {
    return new JobPartNames(state()).named(part.home());
  }

  /** The part that is to come out next. */
  PhoneView due() {
    return next()
        .map(PartRecord::part)
        .map(part -> with(at(PhoneView.said("Next out", progress()), part), part))
        .orElseGet(() -> PhoneView.said("Every part is out", progress()));
  }

  private static PhoneView at(PhoneView view, Part part) {
    return view.at(part.home().brief(), part.kind().word());
  }

  /** The keys about the part that is next: a press of them says which one it meant. */
  private static PhoneView with(PhoneView view, Part next) {
    String item = Integer.toString(next.item());
    return view.and(
        List.of(
            new PhoneKey(PhoneDeed.OUT, item, "It is out", "without its tag"),
            new PhoneKey(PhoneDeed.SKIP, item, "Later", "")));
  }

  private String progress() {
    long inside = TakeApart.listInside(state()).size();
    int places = state().places().size();
    return places - inside + " of " + places + " out";
  }

  PhoneView scan(CodeLookup found) {
    return told(apart.out(found));
  }

  PhoneView out(Part part) {
    return told(apart.out(state().getPart(part.item())));
  }

  /** Parts of one picture are out: one press, so one step, and all of it or nothing is written. */
  PhoneView allOut(List<PartRecord> parts) {
    int out = job.asOne(() -> outOnce(parts));
    int before = parts.size() - out;
    String were = before == 0 ? "" : " " + before + " out before.";
    return then(
        PhoneView.said("OUT", progress() + "." + were)
            .withCue(Cue.RIGHT)
            .at(Integer.toString(out), out == 1 ? "part" : "parts"));
  }

  private int outOnce(List<PartRecord> parts) {
    int out = 0;
    for (PartRecord part : parts) {
      out += apart.out(part) instanceof TakeApart.Answer.CameOut ? 1 : 0;
    }
    return out;
  }

  void skip(int item) {
    later.add(item);
    if (TakeApart.listInside(state()).stream()
        .allMatch(part -> later.contains(part.part().item()))) {
      later.clear();
    }
  }

  private PhoneView told(TakeApart.Answer answer) {
    return answer.match(
        out -> then(came(out.part().part())),
        already -> then(already(already.part())),
        other -> fittedOrLost(other.part()),
        refused -> refused(refused.verdict()),
        card -> said("Scan the tag of a part here."));
  }

  private PhoneView came(Part part) {
    String over =
        new OffFirst(state())
            .over(part.home()).stream()
                .findFirst()
                .map(one -> "Scan the " + named(one.part()) + " too.")
                .orElse(progress());
    return at(PhoneView.said("OUT", over).withCue(Cue.RIGHT), part);
  }

  private PhoneView already(PartRecord part) {
    return at(PhoneView.said("Already out", "It is " + part.where().words() + "."), part.part());
  }

  private PhoneView fittedOrLost(PartRecord part) {
    boolean lost = part.where() == Whereabouts.LOST;
    return at(
        PhoneView.said(lost ? "Lost" : "Fitted", "See its page on the big screen.")
            .withCue(Cue.ASK),
        part.part());
  }

  private PhoneView refused(Verdict verdict) {
    return PhoneView.said(verdict.word(), verdict.words(new JobPartNames(state())).told())
        .withCue(verdict.cue());
  }

  private static PhoneView said(String words) {
    return PhoneView.said("", words).withCue(Cue.ASK);
  }

  private PhoneView then(PhoneView view) {
    return next()
        .map(part -> with(view.then("Next: " + named(part.part())), part.part()))
        .orElseGet(() -> view.then("Every part is out."));
  }

  PhoneView undo() {
    return due().saying(job.undo().sentence());
  }
}
