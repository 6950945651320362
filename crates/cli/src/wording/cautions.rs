//! What belongs before the first bare shot.

/// What is done before each evening; common practice of the trade and of its safety sheets.
pub const FLEX_AND_LOOK: &str = "Flex and twist every shaft and listen; look at every nock. A nick, a crack or a \
    crackle: destroy it. Carbon splinters are sharp and hard to find: wear sleeves and an arm guard.";

/// What belongs beside cutting and squaring; common practice of the trade.
pub const CUTTING: &str = "Carbon dust: cut wet or with suction, wear a fine dust mask, glasses and gloves, wipe up \
    wet, and keep it away from electronics. Flex every carbon shaft before its first shot.";

/// What belongs beside gluing inserts; common practice of the trade.
pub const INSERTS: [&str; 3] = [
    "Glue and solvent: gloves and fresh air, and no flame near either; warm the metal, never the shaft.",
    "Leave the nocks out and lay the shafts level while it cures: trapped air pushes an insert out.",
    "Never shoot before the glue has cured.",
];

/// What belongs beside the mass of an arrow; common practice of the trade.
pub const LEAST_MASS: &str = "Below the bow maker's least arrow mass a shot is close to a dry fire: his figure, not \
    this program's, is the limit.";

/// What belongs beside fletching; common practice of the trade.
pub const GLUE: [&str; 3] = [
    "Glue and solvent: gloves and fresh air, and no flame near either.",
    "Never shoot before the glue has cured; never dry-fire.",
    "A fletched arrow is heavier than the bare shaft was: weigh one, and hold it to the bow maker's least mass.",
];

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
