package wherefrom.logbook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.shelf.Resume;

/** Where a job was left, as texts in a fixed order. */
final class ResumeLines {
  private static final int FIXED = 9;

  private ResumeLines() {}

  static List<String> of(Resume resume) {
    List<String> texts = new ArrayList<>();
    texts.add(String.valueOf(resume.sequence()));
    texts.add(resume.lastTouched().toString());
    texts.add(resume.lastStep());
    texts.add(resume.stop().orElse(""));
    texts.add(String.valueOf(resume.inEngine()));
    texts.add(String.valueOf(resume.missing()));
    texts.add(String.valueOf(resume.fitted()));
    texts.add(resume.doNext());
    texts.add(StandingLine.of(resume.standing()));
    texts.addAll(resume.waiting());
    return texts;
  }

  /** What {@link #of} gave; its texts are sealed, so that they are nothing else. */
  static Resume read(List<String> texts) {
    return new Resume(
        Long.parseLong(texts.get(0)),
        Instant.parse(texts.get(1)),
        texts.get(2),
        Optional.of(texts.get(3)).filter(stop -> !stop.isEmpty()),
        Integer.parseInt(texts.get(4)),
        Integer.parseInt(texts.get(5)),
        Integer.parseInt(texts.get(6)),
        texts.subList(FIXED, texts.size()),
        texts.get(FIXED - 2),
        StandingLine.read(texts.get(FIXED - 1)));
  }
}
