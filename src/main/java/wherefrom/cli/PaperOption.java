package wherefrom.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.job.pages.PaperSize;

/**
 * The paper that a call wants.
 *
 * @param sizes those that there are
 */
record PaperOption(List<PaperSize> sizes) {
  /** Sheets that are laid on the bench. */
  static final PaperOption BENCH =
      new PaperOption(List.of(PaperSize.A4, PaperSize.A3, PaperSize.LETTER));

  /** Pages of a binder. */
  static final PaperOption BINDER = new PaperOption(List.of(PaperSize.A4, PaperSize.LETTER));

  private static final String NAME = "--paper";

  Option option() {
    return Option.maybe(NAME, "SIZE", words() + "; a4 else");
  }

  /** {@code a4, a3 or letter}. */
  private String words() {
    List<String> names = sizes.stream().map(size -> size.name().toLowerCase(Locale.ROOT)).toList();
    String last = names.get(names.size() - 1);
    return names.stream().limit(names.size() - 1).collect(Collectors.joining(", ")) + " or " + last;
  }

  PaperSize get(Call call) throws BadInput {
    Optional<String> named = call.find(NAME);
    if (named.isEmpty()) {
      return PaperSize.A4;
    }
    return PaperSize.find(named.get())
        .filter(sizes::contains)
        .orElseThrow(
            () ->
                call.wrong(
                    NAME
                        + " is "
                        + words()
                        + ", not \""
                        + named.get().toLowerCase(Locale.ROOT)
                        + "\"."));
  }
}
