package org.tapeline.stack.launch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.HexFormat;

/** Keys of this checkout, made once and readable by its owner only. */
final class Secrets {
  private final Path directory;

  Secrets(Path directory) {
    this.directory = directory;
  }

  /** 32 random bytes as hex, the same at every start. */
  String key(String name) throws IOException {
    Path file = directory.resolve(name);
    if (Files.notExists(file)) {
      Files.createDirectories(directory);
      byte[] key = new byte[32];
      new SecureRandom().nextBytes(key);
      Files.createFile(
          file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
      Files.writeString(file, HexFormat.of().formatHex(key));
    }
    return Files.readString(file).strip();
  }
}
