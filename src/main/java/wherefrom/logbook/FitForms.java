package wherefrom.logbook;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Optional;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.StopGiven;
import wherefrom.parts.Place;
import wherefrom.rules.VerdictName;

/**
 * What was judged, as it stands in the file: that a part had no tag is written where it had none.
 */
final class FitForms {
  private FitForms() {}

  static void register(DomainModule module) {
    module.form(PartFitted.class, Fitted.class, Fitted::of, Fitted::entry);
    module.form(StopGiven.class, Stopped.class, Stopped::of, Stopped::entry);
  }

  record Fitted(
      int item,
      Place place,
      String onPurpose,
      Optional<VerdictName> against,
      @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean untagged) {
    static Fitted of(PartFitted fit) {
      return new Fitted(fit.item(), fit.place(), fit.onPurpose(), fit.against(), fit.untagged());
    }

    PartFitted entry() {
      return new PartFitted(item, place, onPurpose, against, untagged);
    }
  }

  record Stopped(
      int item,
      String spot,
      VerdictName word,
      String sentence,
      boolean stands,
      @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean untagged) {
    static Stopped of(StopGiven stop) {
      return new Stopped(
          stop.item(), stop.spot(), stop.word(), stop.sentence(), stop.stands(), stop.untagged());
    }

    StopGiven entry() {
      return new StopGiven(item, spot, word, sentence, stands, untagged);
    }
  }
}
