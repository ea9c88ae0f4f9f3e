package wherefrom.ui.sample;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import wherefrom.job.phone.PhoneDoor;
import wherefrom.job.phone.PhoneHost;
import wherefrom.job.phone.Phones;
import wherefrom.job.phone.Phones.Medium;
import wherefrom.job.phone.Squares;

/** Doors for phones that let nobody in: what the window shows of them is the test's own. */
public final class SamplePhones implements Phones {
  private static final String ADDRESS = "http://192.168.1.23:47417";

  /** On which networks this computer is. */
  public List<Nearby> nearby = List.of(new Nearby("192.168.1.23", Medium.RADIO, "wlan0"));

  /** Who has joined. */
  public final List<PhoneDoor.Joined> joined = new ArrayList<>();

  /** Whether a phone can join. */
  public boolean invites = true;

  /** Whether a door is open. */
  public boolean open;

  @Override
  public List<Nearby> list() {
    return nearby;
  }

  @Override
  public PhoneDoor open(Nearby at, PhoneHost host) {
    open = true;
    return new Door();
  }

  private final class Door implements PhoneDoor {
    @Override
    public String address() {
      return ADDRESS;
    }

    @Override
    public Optional<Invitation> invitation() {
      String link = ADDRESS + "/#0123456789abcdefghijkl";
      return invites ? Optional.of(new Invitation(link, symbol(link), "417")) : Optional.empty();
    }

    @Override
    public void invite() {
      invites = true;
    }

    @Override
    public List<Joined> joined() {
      return List.copyOf(joined);
    }

    @Override
    public void putOut(int number) {
      joined.removeIf(one -> one.number() == number);
    }

    @Override
    public boolean isOpen() {
      return open;
    }

    @Override
    public void close() {
      open = false;
    }
  }

  private static Squares symbol(String link) {
    try {
      ByteMatrix made = Encoder.encode(link, ErrorCorrectionLevel.M).getMatrix();
      BitSet dark = new BitSet();
      for (int at = 0; at < made.getWidth() * made.getWidth(); at++) {
        dark.set(at, made.get(at % made.getWidth(), at / made.getWidth()) == 1);
      }
      return new Squares(made.getWidth(), dark);
    } catch (WriterException e) {
      throw new IllegalStateException(e);
    }
  }
}
