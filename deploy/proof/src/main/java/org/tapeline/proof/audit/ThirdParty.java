package org.tapeline.proof.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * An artifact of somebody else in one of our parts.
 *
 * @param part such as {@code sizing-service}
 * @param licences by SPDX id where it has one, else by name; it may be used under any one of them,
 *     but an entry with {@code AND} asks for all that it names
 */
record ThirdParty(String part, String artifact, String version, List<String> licences) {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String OURS = "org.tapeline";

  ThirdParty {
    licences = List.copyOf(licences);
  }

  /**
   * All of a part, from its list in the format of CycloneDX.
   *
   * @throws IOException when there is no such list, or nothing in it
   */
  static List<ThirdParty> of(String part, Path list) throws IOException {
    List<ThirdParty> all = new ArrayList<>();
    for (JsonNode component : JSON.readTree(list.toFile()).path("components")) {
      String group = component.path("group").asText();
      if (!group.equals(OURS)) {
        all.add(
            new ThirdParty(
                part,
                group + ":" + component.path("name").asText(),
                component.path("version").asText(),
                licences(component.path("licenses"))));
      }
    }
    if (all.isEmpty()) {
      throw new IOException("There is nothing of others in " + list);
    }
    return all;
  }

  private static List<String> licences(JsonNode said) {
    List<String> licences = new ArrayList<>();
    for (JsonNode each : said) {
      JsonNode licence = each.path("license");
      String name =
          each.has("expression")
              ? each.path("expression").asText()
              : licence.path("id").asText(licence.path("name").asText());
      licences.addAll(List.of(name.split(" OR ")));
    }
    return licences.stream().map(name -> name.replaceAll("[()]", "").strip()).distinct().toList();
  }
}
