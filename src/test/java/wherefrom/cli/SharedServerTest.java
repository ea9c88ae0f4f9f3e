package wherefrom.cli;

import java.nio.file.Path;
import wherefrom.server.TestServer;

/** Every command once more, on a shared server: what it does is the same. */
class SharedServerTest extends OneEntryTest {
  private Path folder = Path.of("");

  @Override
  Shop shop(Path in) {
    folder = in;
    return Shop.on(TestServer.empty(), in);
  }

  @Override
  Shop elsewhere() {
    return Shop.on(TestServer.empty(), folder.resolve("elsewhere"));
  }
}
