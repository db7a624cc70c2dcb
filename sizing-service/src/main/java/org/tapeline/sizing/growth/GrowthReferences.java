package org.tapeline.sizing.growth;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** The reference in force: the association's own file when one is named, else KiGGS. */
@Singleton
class GrowthReferences {
  private static final String BUILT_IN = "/growth/kiggs-2003-2006.csv";
  private static final String BUILT_IN_NAME = "KiGGS 2003-2006";

  @Produces
  @Singleton
  GrowthReference inForce(@ConfigProperty(name = "tapeline.growth.reference") Optional<String> own)
      throws IOException {
    if (own.isPresent()) {
      Path file = Path.of(own.get());
      try (Reader reader = Files.newBufferedReader(file)) {
        return GrowthReferenceFile.read(file.getFileName().toString(), reader);
      }
    }
    try (Reader reader =
        new InputStreamReader(
            GrowthReferences.class.getResourceAsStream(BUILT_IN), StandardCharsets.UTF_8)) {
      return GrowthReferenceFile.read(BUILT_IN_NAME, reader);
    }
  }
}
