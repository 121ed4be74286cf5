package rallywright.web.oncourt;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import rallywright.catalogue.Catalogue;
import rallywright.paper.DrillBook;

/** Where drills are looked up: the catalogue that ships. */
@Configuration
class CourtDrills {

  @Bean
  DrillBook drillBook() {
    Catalogue shipped = Catalogue.shipped();
    return new DrillBook(shipped::drill, shipped::yardstick);
  }
}
