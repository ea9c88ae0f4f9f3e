package wherefrom.ui.engine;

import java.util.List;
import java.util.stream.IntStream;
import wherefrom.engine.Layout;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;

/**
 * Keeps a layout on the shelf; an older one of its name stays unless the person lets it go.
 *
 * @param layout is sound
 */
record LayoutKeeping(ScreenContext context, Layout layout) {
  private static final int MOST_NAME = 40;

  void keep() {
    if (context.shelf().listLayouts().contains(layout)) {
      said(layout);
    } else if (context.shelf().isLayoutTaken(layout.name())) {
      ask();
    } else {
      keep(layout, false);
    }
  }

  private void ask() {
    Layout other = layout.copyAs(freeName(), layout.title());
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(() -> keep(other, false), "Keep both", "the new one is " + other.name()),
            new Choice<>(
                () -> keep(layout, true), "Replace it", "the layout that is there is lost"));
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context, "The layout " + layout.name() + " is there", ways, Runnable::run));
  }

  /** The first name behind this one that is free, such as {@code my-v8-2}. */
  private String freeName() {
    return IntStream.iterate(2, number -> number + 1)
        .mapToObj(this::numbered)
        .filter(name -> !context.shelf().isLayoutTaken(name))
        .findFirst()
        .orElseThrow();
  }

  private String numbered(int number) {
    String end = "-" + number;
    String name = layout.name();
    return name.substring(0, Math.min(name.length(), MOST_NAME - end.length())) + end;
  }

  private void keep(Layout kept, boolean replace) {
    if (context.attempt(() -> context.shelf().keepLayout(kept, replace))) {
      said(kept);
    }
  }

  private void said(Layout kept) {
    context.say(kept.title() + " is kept on the shelf for other jobs, as " + kept.name() + ".");
  }
}
