package wherefrom.ui.phone;

import java.io.IOException;
import java.util.Optional;
import wherefrom.job.phone.PhoneDoor;
import wherefrom.job.phone.Phones.Nearby;
import wherefrom.ui.app.ScreenContext;

/** The door for phones while the window is open: none until one is asked for. */
public final class PhonesIn {
  private final ScreenContext context;
  private Optional<PhoneDoor> door = Optional.empty();
  private Runnable listener = () -> {};

  private PhonesIn(ScreenContext context) {
    this.context = context;
    context.whenJobCloses(this::stop);
  }

  /** The one of this window. */
  public static PhonesIn of(ScreenContext context) {
    return context.kept().keep(PhonesIn.class, () -> new PhonesIn(context));
  }

  /** The door; empty where none is open. */
  Optional<PhoneDoor> door() {
    return door.filter(PhoneDoor::isOpen);
  }

  /** Lets phones in at an address, and nowhere else. */
  void open(Nearby at) throws IOException {
    stop();
    door = Optional.of(context.services().phones().open(at, new WindowHost(context, this::news)));
  }

  /** No phone can do anything more. */
  void stop() {
    door.ifPresent(PhoneDoor::close);
    door = Optional.empty();
  }

  /** Who is told of phones that come and go, in place of the one before. */
  void listen(Runnable told) {
    listener = told;
  }

  private void news() {
    listener.run();
  }

  /** How many phones have joined, in words. */
  public String words() {
    int count = door().map(open -> open.joined().size()).orElse(0);
    if (count == 0) {
      return "its camera reads tags, its glass shows the answer";
    }
    return count == 1 ? "1 phone has joined" : count + " phones have joined";
  }
}
