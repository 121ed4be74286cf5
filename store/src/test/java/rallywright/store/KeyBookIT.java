package rallywright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rallywright.store.KeyBook.Kind;

class KeyBookIT {

  @ParameterizedTest
  @EnumSource
  void key_untilItExpires_opensItsScope(TestDatabase database) {
    StoreAddress address = database.fresh();
    String key;
    try (ClubStore store = ClubStore.open(address)) {
      key = store.keys().issue(Kind.ON_COURT, "s-monday", 1_000);
    }
    try (ClubStore store = ClubStore.open(address)) {
      assertThat(store.keys().check(Kind.ON_COURT, key, 999)).contains("s-monday");
      assertThat(store.keys().check(Kind.ON_COURT, key, 1_000)).isEmpty();
      assertThat(store.keys().check(Kind.START, key, 999)).isEmpty();
      assertThat(store.keys().check(Kind.ON_COURT, key + "A", 999)).isEmpty();
      assertThat(store.keys().check(Kind.ON_COURT, "", 999)).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void key_revoked_opensNothing(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      String one = store.keys().issue(Kind.ON_COURT, "s-1", 1_000);
      String two = store.keys().issue(Kind.ON_COURT, "s-1", 1_000);
      String other = store.keys().issue(Kind.ON_COURT, "s-2", 1_000);
      store.keys().revoke(one);
      assertThat(store.keys().check(Kind.ON_COURT, one, 0)).isEmpty();
      assertThat(store.keys().check(Kind.ON_COURT, two, 0)).isPresent();
      store.keys().revokeAll(Kind.ON_COURT, "s-1");
      assertThat(store.keys().check(Kind.ON_COURT, two, 0)).isEmpty();
      assertThat(store.keys().check(Kind.ON_COURT, other, 0)).isPresent();
      store.keys().removeExpired(1_001);
      assertThat(store.keys().check(Kind.ON_COURT, other, 0)).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void startKey_isGoodOnce(TestDatabase database) {
    try (ClubStore store = ClubStore.open(database.fresh())) {
      String key = store.keys().issue(Kind.START, "", 1_000);
      assertThat(store.keys().checkOnce(Kind.START, key, 0)).contains("");
      assertThat(store.keys().checkOnce(Kind.START, key, 0)).isEmpty();
    }
  }

  @Test
  void keys_areLongUniqueAndNotInTheFile() throws IOException {
    StoreAddress address = TestDatabase.SQLITE.fresh();
    Set<String> keys = new HashSet<>();
    try (ClubStore store = ClubStore.open(address)) {
      for (int n = 0; n < 50; n++) {
        keys.add(store.keys().issue(Kind.SHARE, "p-" + n, 1_000));
      }
    }
    String bytes = Files.readString(TestDatabase.fileOf(address), StandardCharsets.ISO_8859_1);
    assertThat(keys)
        .hasSize(50)
        .allSatisfy(key -> assertThat(key).matches("[A-Za-z0-9_-]{27}"))
        .allSatisfy(key -> assertThat(bytes).doesNotContain(key));
  }
}
