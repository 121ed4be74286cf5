package rallywright.web.oncourt;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import rallywright.web.signin.Door;

/**
 * The addresses of the court. The page itself holds nothing of the club, so that a phone can load
 * it before its key is looked at; what it reads and sends is for the coach and the key's session.
 */
@Configuration
class CourtDoors {

  @Bean
  Door keyDoor() {
    return new Door("/court", Door.Who.EVERYBODY);
  }

  @Bean
  Door openingDoor() {
    return new Door("/court/open", Door.Who.EVERYBODY, Door.Posts.JSON_ONLY);
  }

  @Bean
  Door phoneDoor() {
    return new Door("/court/*", Door.Who.EVERYBODY);
  }

  @Bean
  Door eventDoor() {
    return new Door("/court/*/events", Door.Who.COURT, Door.Posts.JSON_ONLY);
  }

  @Bean
  Door arrivalDoor() {
    return new Door("/court/*/arrivals", Door.Who.COURT, Door.Posts.JSON_ONLY);
  }

  @Bean
  Door seatDoor() {
    return new Door("/court/*/seats", Door.Who.COURT, Door.Posts.JSON_ONLY);
  }

  @Bean
  Door stateDoor() {
    return new Door("/court/*/state", Door.Who.COURT, Door.Posts.JSON_ONLY);
  }
}
