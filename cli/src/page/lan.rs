//! The local network: this machine's address there, and a link as a square that a phone reads.

use std::net::{IpAddr, Ipv4Addr, UdpSocket};

use qrcode::QrCode;
use qrcode::render::unicode::Dense1x2;

/// An address kept for examples (RFC 5737), so that the way out is asked for and nothing is ever sent to it.
const ELSEWHERE: (Ipv4Addr, u16) = (Ipv4Addr::new(198, 51, 100, 1), 9);

/// The address that was chosen, or the one by which this machine goes out; nothing where it has none.
pub(super) fn address(chosen: Option<Ipv4Addr>) -> Option<Ipv4Addr> {
    if chosen.is_some() {
        return chosen;
    }
    // Telling a socket of datagrams where it would send to sends nothing: it only settles from which address.
    let socket = UdpSocket::bind((Ipv4Addr::UNSPECIFIED, 0)).ok()?;
    socket.connect(ELSEWHERE).ok()?;
    let IpAddr::V4(own) = socket.local_addr().ok()?.ip() else { return None };
    (!own.is_loopback() && !own.is_unspecified()).then_some(own)
}

/// A link as a square of dark and light. Where there is colour it is dark on light whatever the screen; else its blocks are
/// the light, as on a dark screen.
pub(super) fn square(link: &str, colour: bool) -> String {
    let Ok(code) = QrCode::new(link) else { return String::new() };
    let mut renderer = code.render::<Dense1x2>();
    if !colour {
        renderer.dark_color(Dense1x2::Light).light_color(Dense1x2::Dark);
    }
    let square = renderer.build();
    let line = |line: &str| if colour { format!("\x1b[30;107m{line}\x1b[0m\n") } else { format!("{line}\n") };
    square.lines().map(line).collect()
}
