package wherefrom.phone;

import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import wherefrom.job.phone.PhoneDoor;
import wherefrom.job.phone.PhoneHost;
import wherefrom.job.phone.Phones;

/** Doors on the networks of this computer. */
public final class HttpPhones implements Phones {
  /** Tried first, so that a firewall can be told of one port. */
  static final int PORT = 47417;

  /** What the server of the language reads once, before its first door: seconds, and counts. */
  private static final Map<String, String> SERVER =
      Map.of(
          "sun.net.httpserver.maxReqTime", "60",
          "sun.net.httpserver.maxRspTime", "60",
          "sun.net.httpserver.idleInterval", "60",
          "sun.net.httpserver.maxReqHeaders", "60",
          "sun.net.httpserver.maxReqHeaderSize", "16384",
          "jdk.httpserver.maxConnections", "90",
          "sun.net.httpserver.nodelay", "true");

  private final LongSupplier nanos;
  private final Consumer<byte[]> random;
  private final Limits limits;

  /**
   * @param nanos a steady clock, in nanoseconds
   * @param random fills bytes with what nobody can guess
   */
  public HttpPhones(LongSupplier nanos, Consumer<byte[]> random) {
    this(nanos, random, Limits.USUAL);
  }

  HttpPhones(LongSupplier nanos, Consumer<byte[]> random, Limits limits) {
    this.nanos = nanos;
    this.random = random;
    this.limits = limits;
  }

  @Override
  public List<Nearby> list() {
    return Networks.list();
  }

  @Override
  public PhoneDoor open(Nearby at, PhoneHost host) throws IOException {
    SERVER.forEach(System::setProperty);
    InetAddress address = InetAddress.getByName(at.address());
    try {
      return door(new InetSocketAddress(address, PORT), host);
    } catch (BindException taken) {
      return anywhere(address, host);
    }
  }

  private PhoneDoor anywhere(InetAddress address, PhoneHost host) throws IOException {
    try {
      return door(new InetSocketAddress(address, 0), host);
    } catch (IOException e) {
      throw new IOException(
          "Phones cannot be let in at " + address.getHostAddress() + ": choose another network.",
          e);
    }
  }

  private PhoneDoor door(InetSocketAddress at, PhoneHost host) throws IOException {
    return new Door(at, host, limits, nanos, random);
  }
}
