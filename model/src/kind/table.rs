//! The table of kinds: a new kind is a row here, its variant, and its row in `model/data/sizes.yaml`.

use super::PieceKind;
use super::traits::{Body, Drawn, Front, KeepsClear, SeatForm, Stands, Traits};
use crate::rules::Clearance;

/// What most kinds have in common.
const PLAIN: Traits = Traits {
    seat: None,
    front: Front::None,
    stands: Stands::AtWall,
    body: Body::Solid,
    hangs: false,
    is_led_to: false,
    keeps_clear: KeepsClear::Nothing,
    off_wall: None,
    is_surface: false,
    gives_light: false,
    needs_power: false,
    moves_aside: false,
    is_square: false,
    wants_inner_wall: false,
    drawn: Drawn::Plain,
};

/// What one sits on, but for its form.
const SEAT: Traits = Traits {
    stands: Stands::AsSeat,
    is_led_to: true,
    off_wall: Some(Clearance::SeatOffWall),
    drawn: Drawn::Upholstered,
    ..PLAIN
};

/// What one opens at a wall.
const STORAGE: Traits = Traits {
    front: Front::Opened,
    is_led_to: true,
    keeps_clear: KeepsClear::Before(Clearance::StorageFront),
    off_wall: Some(Clearance::StorageOffWall),
    drawn: Drawn::WithFront,
    ..PLAIN
};

impl PieceKind {
    /// What the kind is: its row in the table.
    #[must_use]
    pub const fn traits(self) -> Traits {
        match self {
            PieceKind::Sofa => Traits { seat: Some(SeatForm::Straight), ..SEAT },
            PieceKind::CornerSofa => Traits { seat: Some(SeatForm::Corner), ..SEAT },
            PieceKind::DayBed => Traits { seat: Some(SeatForm::DayBed), ..SEAT },
            PieceKind::Armchair => Traits { seat: Some(SeatForm::Single), ..SEAT },
            PieceKind::CoffeeTable => {
                Traits { stands: Stands::BeforeSeat, is_surface: true, moves_aside: true, ..PLAIN }
            }
            PieceKind::SideTable => Traits { stands: Stands::BesideSeats, is_surface: true, is_square: true, ..PLAIN },
            PieceKind::MediaUnit => Traits {
                front: Front::Watched,
                off_wall: Some(Clearance::MediaOffWall),
                needs_power: true,
                drawn: Drawn::WithFront,
                ..PLAIN
            },
            PieceKind::Bookcase | PieceKind::Sideboard | PieceKind::Cabinet => STORAGE,
            PieceKind::Desk => {
                Traits { front: Front::SatAt, keeps_clear: KeepsClear::Before(Clearance::DeskFront), ..STORAGE }
            }
            PieceKind::DiningTable => Traits {
                front: Front::DinedAt,
                stands: Stands::AtWallOrFree,
                keeps_clear: KeepsClear::AlongSides {
                    seated: Clearance::DiningChair,
                    passing: Clearance::DiningPassing,
                },
                ..PLAIN
            },
            PieceKind::FloorLamp => Traits {
                stands: Stands::BesideSeats,
                body: Body::Slender,
                gives_light: true,
                drawn: Drawn::Lamp,
                needs_power: true,
                is_square: true,
                ..PLAIN
            },
            PieceKind::Rug => Traits { stands: Stands::UnderSeats, body: Body::Flat, drawn: Drawn::Rug, ..PLAIN },
            PieceKind::WallScreen => {
                Traits { front: Front::Watched, hangs: true, needs_power: true, drawn: Drawn::Screen, ..PLAIN }
            }
            PieceKind::Bench => Traits { drawn: Drawn::Padded, ..PLAIN },
            PieceKind::Plant => Traits { body: Body::Slender, is_square: true, drawn: Drawn::Plant, ..PLAIN },
            PieceKind::Pouf | PieceKind::FloorCushion => Traits {
                stands: Stands::BesideSeats,
                moves_aside: true,
                is_square: true,
                drawn: Drawn::Padded,
                ..PLAIN
            },
            PieceKind::OpenFloor => Traits {
                stands: Stands::AtWallOrFree,
                body: Body::Open,
                is_led_to: true,
                drawn: Drawn::OpenFloor,
                ..PLAIN
            },
            PieceKind::Console => Traits { stands: Stands::AtWallOrBehindSeat, ..PLAIN },
            PieceKind::Piano => Traits {
                front: Front::SatAt,
                keeps_clear: KeepsClear::Before(Clearance::DeskFront),
                wants_inner_wall: true,
                ..STORAGE
            },
        }
    }
}
