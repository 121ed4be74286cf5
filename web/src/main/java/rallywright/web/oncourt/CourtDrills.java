package rallywright.web.oncourt;

import java.util.Optional;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import rallywright.paper.DrillBook;

/** Where drills are looked up. */
@Configuration
class CourtDrills {

  @Bean
  DrillBook drillBook() {
    return new DrillBook(key -> Optional.empty(), key -> Optional.empty());
  }
}
