package wherefrom.ui.bags;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.layout.Region;
import wherefrom.inspection.Subject;
import wherefrom.job.bags.Bag;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.bags.BigParts;
import wherefrom.job.photos.Photograph;
import wherefrom.job.torque.BigPartTorque;
import wherefrom.job.torque.KeptCard;
import wherefrom.text.Words;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.photos.PhotoLoader;
import wherefrom.ui.photos.PhotoStrip;

/** What is told of a big part in rows: where it is, its marks, bags, torque cards, photographs. */
final class BigPartRows {
  private final ScreenContext context;
  private final PhotoLoader loader;

  BigPartRows(ScreenContext context) {
    this.context = context;
    loader = new PhotoLoader(context);
  }

  List<Supplier<Region>> of(BigPartRecord part) {
    List<Supplier<Region>> lines = new ArrayList<>();
    // With large letters the drawing says more; what comes first is asked when the tag is pressed.
    String first =
        context.touch().brief(new BigParts(context.getJob()).findFirst(part).orElse(""), "");
    told(lines, Words.capital(part.where().words()), first);
    if (!part.note().isEmpty()) {
      told(lines, "Noted", part.note());
    }
    if (!part.marks().isEmpty()) {
      told(lines, "Marks", part.marks());
    }
    part.decision().ifPresent(made -> told(lines, "Decided: " + made.word(), part.reason()));
    part.before().ifPresent(was -> told(lines, "Decide again", "it was: " + was.word()));
    BagBook.of(context.state()).bagsOf(part.number()).forEach(bag -> lines.add(() -> row(bag)));
    for (KeptCard card : BigPartTorque.of(context.state(), part.part().name())) {
      lines.add(
          () ->
              ListRow.key(
                  context.touch(),
                  Words.capital(card.words()),
                  List.of(card.state()),
                  () -> context.navigator().show(ScreenId.TORQUE)));
    }
    PhotoStrip.rows(context, loader, () -> photos(part), PhotoStrip.across(context))
        .forEach(strip -> lines.add(() -> strip));
    return lines;
  }

  private void told(List<Supplier<Region>> lines, String heading, String words) {
    lines.add(() -> ListRow.plain(context.touch(), heading, List.of(words)));
  }

  private Region row(Bag bag) {
    return ListRow.key(
        context.touch(),
        Words.capital(bag.words()),
        List.of(Words.count(bag.filled().pieces(), "piece") + ", " + bag.where().words()),
        () -> context.navigator().open(() -> new BagScreen(context, bag.number())));
  }

  private List<Photograph> photos(BigPartRecord part) {
    return Photograph.listOf(context.state(), Subject.ofBigPart(part.number()));
  }
}
