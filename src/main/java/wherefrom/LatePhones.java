package wherefrom;

import java.io.IOException;
import java.util.List;
import java.util.function.Supplier;
import wherefrom.job.phone.PhoneDoor;
import wherefrom.job.phone.PhoneHost;
import wherefrom.job.phone.Phones;

/** Doors for phones, whose server is loaded when one is first asked for. */
final class LatePhones implements Phones {
  private final Supplier<Phones> phones;

  LatePhones(Supplier<Phones> make) {
    phones = new Lazy<>(make);
  }

  @Override
  public List<Nearby> list() {
    return phones.get().list();
  }

  @Override
  public PhoneDoor open(Nearby at, PhoneHost host) throws IOException {
    return phones.get().open(at, host);
  }
}
