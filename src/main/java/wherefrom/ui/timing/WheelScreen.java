package wherefrom.ui.timing;

import java.util.Arrays;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.timing.TimingBook;
import wherefrom.job.timing.TimingSetting;
import wherefrom.quantity.Amount;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;

/** What must be known of wheel, dial and cam card before readings mean anything. */
public final class WheelScreen extends ListPage {
  private final TimingBook book;

  WheelScreen(ScreenContext context) {
    super(context, "Wheel and dial");
    book = new TimingBook(context.getJob());
  }

  @Override
  protected List<Region> rows() {
    return Arrays.stream(TimingSetting.values()).map(this::row).toList();
  }

  private Region row(TimingSetting setting) {
    return key(
        touch().brief(setting.words(), setting.brief()),
        book.find(setting).map(Amount::text).orElse("not known yet"),
        () -> SettingAsking.ask(context, book, setting));
  }
}
