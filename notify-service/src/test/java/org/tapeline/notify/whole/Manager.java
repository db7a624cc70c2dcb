package org.tapeline.notify.whole;

import static io.restassured.RestAssured.given;

import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;

/** The equipment manager at pages and addresses. */
final class Manager {
  private Manager() {}

  static ValidatableResponse at(String path) {
    return given().auth().preemptive().basic("manager", "larkfield").get(path).then();
  }

  static String page(String path) {
    return at(path).statusCode(200).extract().asString();
  }

  static JsonPath json(String path) {
    return at(path).statusCode(200).extract().jsonPath();
  }
}
