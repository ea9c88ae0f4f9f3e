package wherefrom.ui;

import java.util.List;
import wherefrom.job.phone.PhoneDoor.Joined;
import wherefrom.job.phone.Phones.Medium;
import wherefrom.job.phone.Phones.Nearby;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.phone.PhonesScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Phones that join. */
final class PhoneShots {
  private PhoneShots() {}

  static List<Shot> all() {
    return List.of(
        new Shot("phone-off", PhonesScreen.class, PhoneShots::show),
        new Shot("phone-network", ChoiceScreen.class, PhoneShots::networks),
        new Shot("phone-code", PhonesScreen.class, PhoneShots::open),
        new Shot("phone-joined", PhonesScreen.class, PhoneShots::joined),
        new Shot("phone-shut", PhonesScreen.class, PhoneShots::shut));
  }

  private static void show(SampleWindow window) {
    window.shell.context().open(SampleJob.apart().job);
    window.shell.context().navigator().show(ScreenId.PHONES);
    window.layOut();
  }

  private static void networks(SampleWindow window) {
    window.services.samplePhones.nearby =
        List.of(
            new Nearby("192.168.1.23", Medium.RADIO, "wlan0"),
            new Nearby("10.0.4.7", Medium.CABLE, "enp3s0"));
    show(window);
    window.press("Let phones in");
  }

  private static void open(SampleWindow window) {
    show(window);
    window.press("Let phones in");
  }

  private static void joined(SampleWindow window) {
    window.services.samplePhones.joined.add(new Joined(1, "Anna", true));
    window.services.samplePhones.joined.add(new Joined(2, "", false));
    open(window);
    window.layOut();
    boolean parted =
        window.targets().stream().anyMatch(key -> window.words(key).startsWith("Phones"));
    if (parted) {
      window.press("Phones");
    }
  }

  private static void shut(SampleWindow window) {
    window.services.samplePhones.invites = false;
    open(window);
  }
}
