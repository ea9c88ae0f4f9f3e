package wherefrom.scan.grease;

import java.awt.image.BufferedImage;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import wherefrom.job.image.GreyImage;

/**
 * zxing-cpp as WebAssembly in a node process, where node and the package zxing-wasm are there; the
 * system property {@value #WHERE} names the node_modules folder.
 */
final class ZxingCpp implements AutoCloseable {
  static final String WHERE = "wherefrom.node_modules";

  private static final String SCRIPT =
      """
      const path = require('path');
      const { readBarcodes, prepareZXingModule } =
          require(path.join(process.argv[2], 'zxing-wasm/dist/cjs/reader/index.js'));
      const fs = require('fs');
      const wasm = fs.readFileSync(
          path.join(process.argv[2], 'zxing-wasm/dist/reader/zxing_reader.wasm'));
      prepareZXingModule({ overrides: { wasmBinary: wasm.buffer.slice(
          wasm.byteOffset, wasm.byteOffset + wasm.byteLength) } });
      let held = Buffer.alloc(0);
      let busy = false;
      async function work() {
        if (busy) return;
        busy = true;
        while (held.length >= 8) {
          const w = held.readInt32BE(0), h = held.readInt32BE(4);
          if (held.length < 8 + w * h) break;
          const grey = held.subarray(8, 8 + w * h);
          const data = new Uint8ClampedArray(4 * w * h);
          for (let i = 0; i < w * h; i++) {
            data[4 * i] = data[4 * i + 1] = data[4 * i + 2] = grey[i];
            data[4 * i + 3] = 255;
          }
          held = held.subarray(8 + w * h);
          const found = await readBarcodes({ data, width: w, height: h, colorSpace: 'srgb' },
              { formats: ['QRCode'], tryHarder: true, tryRotate: true, tryInvert: true,
                tryDownscale: true, maxNumberOfSymbols: 128 });
          process.stdout.write(found.map(one => one.text).join('\\t') + '\\n');
        }
        busy = false;
      }
      process.stdin.on('data', more => { held = Buffer.concat([held, more]); work(); });
      """;

  private final Process process;
  private final BufferedReader answers;

  private ZxingCpp(Process process) {
    this.process = process;
    answers =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
  }

  static Optional<ZxingCpp> find() throws IOException {
    String folder = System.getProperty(WHERE, "");
    if (folder.isEmpty() || !Files.isDirectory(Path.of(folder, "zxing-wasm"))) {
      return Optional.empty();
    }
    Path script = Files.createTempFile("reader", ".cjs");
    Files.writeString(script, SCRIPT);
    script.toFile().deleteOnExit();
    Process process =
        new ProcessBuilder("node", script.toString(), folder)
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    ZxingCpp reader = new ZxingCpp(process);
    reader.read(Plane.of(new BufferedImage(64, 64, BufferedImage.TYPE_BYTE_GRAY)).toGrey());
    return Optional.of(reader);
  }

  List<String> read(GreyImage image) {
    try {
      OutputStream out = process.getOutputStream();
      out.write(ByteBuffer.allocate(8).putInt(image.width()).putInt(image.height()).array());
      out.write(image.pixels(), 0, image.width() * image.height());
      out.flush();
      String line = answers.readLine();
      if (line == null) {
        throw new IllegalStateException("the node process ended");
      }
      return line.isEmpty() ? List.of() : List.of(line.split("\t"));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  @Override
  public void close() {
    process.destroy();
  }
}
