package wherefrom.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import wherefrom.text.Words;

/** Names of constants as they are typed: {@code NEW_FLAT_CAM} is {@code new-flat-cam}. */
final class Names {
  private Names() {}

  static String of(Enum<?> constant) {
    return american(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  /** Some constants are spelled in the British way, as they stand so in logbooks. */
  static String american(String name) {
    return name.replace("grey", "gray")
        .replace("aluminium", "aluminum")
        .replace("centre", "center");
  }

  static String all(List<? extends Enum<?>> constants) {
    return constants.stream().map(Names::of).collect(Collectors.joining(", "));
  }

  /** The constant with this name; where there is none, which there are. */
  static <E extends Enum<E>> E find(List<E> constants, String what, String name) throws BadInput {
    return constants.stream()
        .filter(constant -> of(constant).equals(american(name)))
        .findFirst()
        .orElseThrow(
            () ->
                new BadInput(
                    "\""
                        + name
                        + "\" is not "
                        + Words.withArticle(what)
                        + ". Use one of: "
                        + all(constants)
                        + "."));
  }

  static <E extends Enum<E>> E find(Class<E> type, String what, String name) throws BadInput {
    return find(Arrays.asList(type.getEnumConstants()), what, name);
  }
}
