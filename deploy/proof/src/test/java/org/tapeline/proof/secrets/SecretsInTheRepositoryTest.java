package org.tapeline.proof.secrets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A key or a password in the repository")
class SecretsInTheRepositoryTest {
  private static final Path ROOT = Path.of(System.getProperty("tapeline.root"));
  private static final Set<String> NOT_OURS = Set.of("target", ".git", ".local", "node_modules");

  /** Of this machine's own PostgreSQL, of the demo's users, of tests; known to everybody. */
  private static final Set<String> KNOWN_TO_ALL =
      Set.of(
          "tapeline",
          "larkfield",
          "a-key-for-tests-that-is-32-characters-or-more",
          "a-signing-key-for-tests-that-is-32-characters-long");

  /** A setting or a constant with a value of its own; {@code $} and {@code <} begin no value. */
  private static final Pattern GIVEN =
      Pattern.compile(
          "(?i)(?:password|passwd|passphrase|secret|api[-_.]?key|encryption[-_.]key"
              + "|signing[-_.]key|(?:link|sheet|session|text)[-_.]key)"
              + "[\"']?\\s*[=:]\\s*[\"']?([A-Za-z0-9+/_.~!@%-]{4,})[\"']?\\s*[;,]?\\s*(?:#.*)?$");

  private static final Pattern PRIVATE_KEY =
      Pattern.compile("-----BEGIN [A-Z ]*" + "PRIVATE KEY-----");

  @Test
  @DisplayName("is the demo's, a test's, or none")
  void none() throws IOException {
    List<String> found = new ArrayList<>();
    List<Path> files = files();
    for (Path file : files) {
      try {
        List<String> lines = Files.readAllLines(file);
        for (int i = 0; i < lines.size(); i++) {
          if (tells(lines.get(i), file.toString().endsWith(".java"))) {
            found.add(ROOT.relativize(file) + " line " + (i + 1));
          }
        }
      } catch (MalformedInputException noText) {
        // A picture, a font, an archive.
      }
    }
    assertThat(files).hasSizeGreaterThan(1000);
    assertThat(found).isEmpty();
  }

  private static List<Path> files() throws IOException {
    List<Path> files = new ArrayList<>();
    Files.walkFileTree(
        ROOT,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
            return NOT_OURS.contains(folder.getFileName().toString())
                ? FileVisitResult.SKIP_SUBTREE
                : FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            if (attributes.isRegularFile()) {
              files.add(file);
            }
            return FileVisitResult.CONTINUE;
          }
        });
    return files;
  }

  /** In a program only what stands in quotes is a value; in a settings file everything is. */
  private static boolean tells(String line, boolean program) {
    Matcher given = GIVEN.matcher(line);
    boolean value =
        given.find()
            && !KNOWN_TO_ALL.contains(given.group(1))
            && !given.group(1).startsWith("put-")
            && (!program || line.contains("\"" + given.group(1) + "\""));
    return value || PRIVATE_KEY.matcher(line).find();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "quarkus.datasource.password=hunter22",
        "  POSTGRES_PASSWORD: s3cret-of-mine",
        "export TAPELINE_LINK_KEY=0123456789abcdef0123456789abcdef",
        "apiKey: abcd1234",
        "-----BEGIN RSA " + "PRIVATE KEY-----"
      })
  @DisplayName("would be seen")
  void seen(String line) {
    assertThat(tells(line, false)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "tapeline.link.key=${TAPELINE_LINK_KEY:}",
        "quarkus.oidc.credentials.secret=put-the-secret-of-the-client-here",
        "%dev.quarkus.datasource.password=tapeline",
        "POSTGRES_PASSWORD: ${TAPELINE_DATABASE_PASSWORD:?made by deploy/containers/up}"
      })
  @DisplayName("is not where only its place is")
  void notSeen(String line) {
    assertThat(tells(line, false)).isFalse();
  }
}
