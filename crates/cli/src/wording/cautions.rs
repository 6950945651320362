//! What belongs before the first bare shot.

/// What is done before each evening; common practice of the trade and of its safety sheets.
pub const FLEX_AND_LOOK: &str = "Flex and twist every shaft and listen; look at every nock. A nick, a crack or a \
    crackle: destroy it. Carbon splinters are sharp and hard to find: wear sleeves and an arm guard.";

/// The cautions, each a sentence or two; common practice of the trade and of its safety sheets.
pub const BEFORE_THE_FIRST_BARE_SHOT: [&str; 8] = [
    "Local law and the instruction of a licensed teacher come before anything this program says.",
    FLEX_AND_LOOK,
    "Have a wide, safe backstop, and nobody near the butt or behind it. A bare shaft can fly sideways or \
     skip off.",
    "Shoot the first bare shots from 5 to 9 m, and again after every large change.",
    "Never put a broadhead on a bare shaft.",
    "Keep to the bow maker's minimum arrow mass: a bare shaft is lighter than a fletched one.",
    "Never dry-fire: a cracked or loose nock is close to it.",
    "One arrow to a spot: an arrow that strikes another can break it unseen.",
];

/// What stands under every reach.
pub const OF_A_REACH: [&str; 3] = [
    "This is an upper bound for practice: known distance, flat ground, your own time. Cold, wind, slope, clothes, nerves \
     and an animal that moves only make it worse.",
    "It is no advice to shoot at game.",
    "Local law and licensed instruction come before anything this program says.",
];
