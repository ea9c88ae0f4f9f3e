package wherefrom.job.phone;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.JobNames;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.TagCode;
import wherefrom.rules.CodeVerdict;
import wherefrom.text.Words;

/** What the codes that a phone sends stand for, and what it asks where they may stand for more. */
final class PhoneCodes {
  private static final int TYPED = 6;

  private final OpenJob job;
  private final JobNames names;

  PhoneCodes(OpenJob job, JobNames names) {
    this.job = job;
    this.names = names;
  }

  private EngineJob state() {
    return job.state();
  }

  private TagBook book() {
    return new TagBook(state(), names);
  }

  /** Every tag that can be in view. */
  List<TagCode> issued() {
    return book().issued();
  }

  /** Every tag that the other jobs of the shelf printed. */
  Supplier<List<TagCode>> printedElsewhere() {
    int engine = state().engine();
    return () -> names.listPrinted(engine);
  }

  CodeLookup find(String text) {
    return book().find(text);
  }

  /** Whether it is as long as what a person types. */
  static boolean isTyped(String text) {
    return text.replaceAll("\\s", "").length() == TYPED;
  }

  /**
   * The part of an item number.
   *
   * @throws IllegalArgumentException with a sentence where the job has none
   */
  PartRecord part(String item) {
    return Optional.of(item)
        .filter(digits -> digits.matches("[0-9]{1,4}"))
        .map(Integer::valueOf)
        .flatMap(state()::findPart)
        .orElseThrow(() -> new IllegalArgumentException("This job has no such part."));
  }

  /** The parts among codes with a space between them. */
  List<PartRecord> parts(String codes) {
    List<PartRecord> parts = new ArrayList<>();
    for (String code : Arrays.asList(codes.split(" "))) {
      if (find(code) instanceof CodeLookup.APart one) {
        parts.add(one.part());
      }
    }
    return parts;
  }

  /** Six digits that may be another tag's: the person says whose. */
  static PhoneView which(CodeVerdict.AlsoFits also) {
    Map<String, String> means = new LinkedHashMap<>(also.here());
    means.putAll(also.near());
    List<PhoneKey> choices = new ArrayList<>();
    means.forEach(
        (digits, words) ->
            choices.add(new PhoneKey(PhoneDeed.CODE, digits, Words.capital(words), "")));
    choices.add(new PhoneKey(PhoneDeed.DUE, "", "Not sure", "photograph the tag"));
    return PhoneView.choice(also.sentence(), choices);
  }

  /** A code that the stop shows: it may be copied from there. */
  PhoneView copied(CodeLookup.APart one) {
    String digits = one.part().part().code(state().engine()).digits();
    return PhoneView.choice(
        "Is this tag on the part in your hand?",
        List.of(
            new PhoneKey(PhoneDeed.CODE, digits, "Yes", "and the other is out of there"),
            new PhoneKey(PhoneDeed.DUE, "", "No", "it was copied from the stop")));
  }

  /**
   * Several codes on one picture.
   *
   * @param out whether all of them can be out at once, where they are parts
   */
  PhoneView several(List<String> codes, boolean out) {
    List<PhoneKey> choices = new ArrayList<>();
    if (out && codes.stream().allMatch(code -> find(code) instanceof CodeLookup.APart)) {
      String all = "All " + codes.size() + " are out";
      choices.add(new PhoneKey(PhoneDeed.ALL_OUT, String.join(" ", codes), all, ""));
    }
    codes.forEach(
        code -> choices.add(new PhoneKey(PhoneDeed.CODE, code, Words.capital(meaning(code)), "")));
    choices.add(PhoneKey.of(PhoneDeed.DUE, "None of them"));
    return PhoneView.choice(codes.size() + " tags: which one?", choices);
  }

  private String meaning(String code) {
    CodeLookup found = find(code);
    return found instanceof CodeLookup.Refused ? code : found.words();
  }
}
