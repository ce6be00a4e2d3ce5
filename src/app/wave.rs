//! Samples as a file that any player opens: a header of 44 bytes, then whole numbers of 16 bits, one channel.

/// Bytes before the first sample.
pub const HEADER: usize = 44;

/// The file of these samples, each times `factor`; full scale is 1.
#[must_use]
pub fn file(samples: &[f32], rate_hz: u32, factor: f32) -> Vec<u8> {
    let size = 2 * samples.len() as u32;
    let mut bytes = Vec::with_capacity(HEADER + size as usize);
    bytes.extend(b"RIFF");
    bytes.extend((size + HEADER as u32 - 8).to_le_bytes());
    bytes.extend(b"WAVEfmt ");
    // Length of what follows; plain numbers; one channel; rate; bytes a second; bytes a sample; bits a sample.
    bytes.extend(16_u32.to_le_bytes());
    bytes.extend(1_u16.to_le_bytes());
    bytes.extend(1_u16.to_le_bytes());
    bytes.extend(rate_hz.to_le_bytes());
    bytes.extend((2 * rate_hz).to_le_bytes());
    bytes.extend(2_u16.to_le_bytes());
    bytes.extend(16_u16.to_le_bytes());
    bytes.extend(b"data");
    bytes.extend(size.to_le_bytes());
    for sample in samples {
        let whole = libm::roundf((sample * factor).clamp(-1.0, 1.0) * f32::from(i16::MAX));
        bytes.extend((whole as i16).to_le_bytes());
    }
    bytes
}
