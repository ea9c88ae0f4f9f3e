package wherefrom.job.inspect;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.EntryFold;
import wherefrom.job.OpenJob;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.bags.BigParts;
import wherefrom.job.entry.BigPartDecided;
import wherefrom.job.entry.BigPartMoved;
import wherefrom.job.entry.FeatureDecided;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.photos.Photograph;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.Whereabouts;

/**
 * Block and heads: their tests, photographs, and what becomes of each. Where a head is a big part
 * of the job as well, one decision is for both.
 */
public final class Castings {

  /**
   * One casting.
   *
   * @param cards its tests, each with its latest answer
   * @param photographs how many there are of it
   * @param decision what becomes of it; empty as well where a later test speaks against reusing it,
   *     or where it came off again after it was put on
   * @param outweighed the decision that is open again for that
   */
  public record Casting(
      Subject.AFeature subject,
      List<CheckCard> cards,
      int photographs,
      Optional<Decision> decision,
      Optional<Decision> outweighed,
      String reason) {
    public Casting {
      cards = List.copyOf(cards);
    }

    /** {@code block}, {@code left head}. */
    public String words() {
      return subject.feature() == Feature.HEAD ? subject.where() + " head" : subject.words();
    }

    /** The worst answer so far. */
    public Look worst() {
      return cards.stream().map(CheckCard::look).max(Look::compareTo).orElse(Look.NOT_LOOKED);
    }

    public long countOpen() {
      return cards.stream().filter(card -> card.look() == Look.NOT_LOOKED).count();
    }

    /** {@code reuse}, {@code undecided}, {@code open again, was reuse}. */
    public String decided() {
      return decision
          .map(Decision::word)
          .or(() -> outweighed.map(was -> "open again, was " + was.word()))
          .orElse("undecided");
    }

    /** Whether it is to be decided about, or a test is left. */
    public boolean isOpen() {
      return countOpen() > 0 || isDoubted() || outweighed.isPresent();
    }

    /** Whether a test speaks against it and nobody has decided since. */
    public boolean isDoubted() {
      return worst().compareTo(Look.PASS) > 0 && decision.isEmpty();
    }
  }

  /**
   * @param on whether the casting was put on with it
   * @param outweighed whether a test that was done later speaks against it, or it came off again
   */
  private record Made(Decision decision, String reason, boolean on, boolean outweighed) {
    Made after(Set<String> against) {
      boolean doubted = decision == Decision.REUSE && !against.isEmpty();
      return new Made(decision, reason, on, outweighed || doubted);
    }

    Made movedTo(Whereabouts to) {
      boolean now = to == Whereabouts.FITTED;
      return new Made(decision, reason, now, outweighed || (on && !now));
    }
  }

  private static final EntryFold<Judged> READS =
      EntryFold.<Judged>none()
          .on(FeatureDecided.class, Judged::decide)
          .on(BigPartDecided.class, Judged::decide)
          .on(FeatureLooked.class, Judged::look)
          .on(BigPartMoved.class, Judged::move);

  private final OpenJob job;

  public Castings(OpenJob job) {
    this.job = job;
  }

  /** The block, then each head. */
  public List<Casting> list() {
    Inspecting inspecting = new Inspecting(job);
    return Inspecting.features(job.state().layout()).stream()
        .filter(at -> at.feature().isCasting())
        .sorted((one, other) -> other.feature().compareTo(one.feature()))
        .map(at -> casting(inspecting, at))
        .toList();
  }

  /** The casting of this name; empty where it is none. */
  public Optional<Casting> find(String subject) {
    return list().stream().filter(one -> one.subject().key().equals(subject)).findFirst();
  }

  private Casting casting(Inspecting inspecting, Subject.AFeature at) {
    Optional<Made> made = made(at);
    return new Casting(
        at,
        inspecting.cards(at),
        Photograph.listOf(job.state(), at).size(),
        made.filter(one -> !one.outweighed()).map(Made::decision),
        made.filter(Made::outweighed).map(Made::decision),
        made.map(Made::reason).orElse(""));
  }

  /** The latest decision, on the casting or on the big part that it is. */
  private Optional<Made> made(Subject.AFeature at) {
    int number = bigPart(at).map(BigPartRecord::number).orElse(0);
    return READS.all(new Judged(at.key(), number), job.state().standing()).latest();
  }

  /** What was decided on a casting, and what was seen since. */
  private static final class Judged {
    private final String subject;
    private final int number;

    /** The tests that speak against it by their latest answers. */
    private final Set<String> against = new HashSet<>();

    private Optional<Made> last = Optional.empty();

    /**
     * @param number of the big part that it is; 0 for none
     */
    Judged(String subject, int number) {
      this.subject = subject;
      this.number = number;
    }

    private void decide(FeatureDecided one) {
      if (one.subject().equals(subject)) {
        decide(new Made(one.decision(), one.reason(), false, false));
      }
    }

    private void decide(BigPartDecided one) {
      if (one.number() == number) {
        decide(new Made(one.decision(), one.reason(), false, false));
      }
    }

    private void decide(Made now) {
      last = Optional.of(now);
      against.clear();
    }

    private void look(FeatureLooked look) {
      if (!look.subject().equals(subject)) {
        return;
      }
      if (look.look().compareTo(Look.PASS) > 0) {
        against.add(look.check());
      } else {
        against.remove(look.check());
      }
    }

    private void move(BigPartMoved moved) {
      if (moved.number() == number) {
        last = last.map(one -> one.movedTo(moved.to()));
      }
    }

    Optional<Made> latest() {
      return last.map(one -> one.after(against));
    }
  }

  /** The head of the bank; where the engine has one head alone, the one that names no bank. */
  private Optional<BigPartRecord> bigPart(Subject.AFeature at) {
    if (at.feature() != Feature.HEAD) {
      return Optional.empty();
    }
    return BagBook.of(job.state()).bigParts().stream()
        .filter(part -> part.part().name().kind() == BigPartKind.HEAD)
        .filter(
            part ->
                part.part().name().bank().equals(at.where()) || part.part().name().bank().isEmpty())
        .findFirst();
  }

  /**
   * Keeps what becomes of a casting.
   *
   * @return what is wrong, in a sentence; empty where it was kept
   */
  public Optional<String> decide(String subject, Decision decision, String reason) {
    return job.asOne(() -> decideOnce(subject, decision, reason));
  }

  private Optional<String> decideOnce(String subject, Decision decision, String reason) {
    Optional<Casting> casting = find(subject);
    if (casting.isEmpty()) {
      return Optional.of("This engine has no casting \"" + subject + "\".");
    }
    Optional<BigPartRecord> big = bigPart(casting.get().subject());
    if (big.isPresent()) {
      new BigParts(job).decide(big.get().number(), decision, reason);
    } else {
      job.record(new FeatureDecided(subject, decision, reason.strip()));
    }
    return Optional.empty();
  }
}
