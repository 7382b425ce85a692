# Daily-life activities: the title, and a hint: how, or what to do until it is allowed.

activity-desk-work = Trabajar en un escritorio con el cabestrillo puesto
    .how = Escriba con la otra mano. La mano operada puede descansar en la mesa, en el cabestrillo.

activity-type-with-sling = Escribir un rato corto en el teclado, cabestrillo puesto
    .how = Acerque el teclado a la mano. No estire el brazo hacia él.

activity-write = Escribir a mano, cabestrillo puesto
    .how = Apoye el antebrazo en la mesa y mueva el papel, no el brazo.

activity-phone-in-hand = Usar el teléfono en el regazo, cabestrillo puesto
    .how = Deje el teléfono en el regazo. Para llamar use el altavoz.

activity-walk = Salir a caminar con el cabestrillo puesto
    .how = Tenga cuidado en las escaleras. Con el cabestrillo cuesta más guardar el equilibrio.

activity-bus-or-train = Viajar en autobús o tren con el cabestrillo puesto
    .how = Siéntese. Agárrese solo con la otra mano.

activity-sleep-back = Dormir boca arriba
    .how = Ponga una almohada bajo el brazo operado. No se quite el cabestrillo mientras su hoja lo diga.

activity-sleep-sound-side = Dormir sobre el otro lado
    .how = Ponga el brazo operado sobre una almohada doblada, del codo a la muñeca.

activity-armpit-care = Lavar y secar bajo el brazo operado
    .how = Inclínese hacia delante y deje colgar el brazo. No lo levante.

activity-wash-face = Lavarse la cara con la mano operada
    .until = Hasta entonces, use la otra mano.

activity-wash-body = Lavarse el cuerpo con la mano operada
    .how = Es más fácil si la otra mano sujeta el codo.

activity-shower = Ducharse con el brazo colgando
    .how = Mantenga la herida cubierta hasta que esté sana. Deje colgar el brazo junto al cuerpo.

activity-wash-hair = Lavarse el pelo con las dos manos, con el cuerpo recto
    .how = Es más fácil si se inclina hacia delante.

activity-wash-hair-leaning = Lavarse el pelo con las dos manos, con el cuerpo inclinado
    .how = Baje la cabeza hacia las manos.

activity-comb-hair = Peinarse con la mano operada
    .until = Hasta entonces, use la otra mano.

activity-brush-teeth = Cepillarse los dientes con la mano operada
    .until = Hasta entonces, use la otra mano.

activity-shave = Afeitarse con la mano operada
    .until = Hasta entonces, use la otra mano.

activity-toilet = Limpiarse en el baño con la mano operada
    .until = Hasta entonces, use la otra mano.

activity-shirt-on = Ponerse una camisa que se abre por delante
    .how = Primero el brazo operado, colgando y flojo. Al quitarla, ese brazo va al final.

activity-pullover = Ponerse una prenda por la cabeza
    .until = Hasta entonces, lleve camisas que se abren por delante.

activity-jacket = Ponerse una chaqueta sin ayuda
    .how = Primero el brazo operado.

activity-bra-fasten = Cerrar el sostén por detrás
    .until = Ciérrelo por delante y gírelo, con la otra mano.

activity-lower-clothes = Subir los pantalones y ponerse los calcetines con las dos manos
    .until = Siéntese. Hasta entonces, use la otra mano.

activity-sleep-operated-side = Dormir sobre el lado operado
    .until = Duerma boca arriba o sobre el otro lado.

activity-eat = Comer con la mano operada
    .until = Apoye el codo en la mesa. Hasta entonces, use la otra mano.

activity-drink-cup = Beber de una taza a medio llenar con la mano operada
    .how = Llénela hasta la mitad. Ponga la otra mano debajo.

activity-type = Escribir en el teclado con las dos manos, sin cabestrillo
    .how = Apoye los dos antebrazos en la mesa.

activity-desk-work-both-hands = Trabajar en un escritorio con las dos manos
    .how = Ponga cerca lo que usa. Haga pausas.

activity-phone-call = Sostener el teléfono en la oreja con la mano operada
    .until = Hasta entonces, use el altavoz o la otra mano.

activity-kettle = Levantar un hervidor a medio llenar con la mano operada
    .until = Llene una taza cada vez. Hasta entonces, use la otra mano.

activity-cook = Cocinar con las dos manos
    .how = Deslice las ollas en lugar de levantarlas.

activity-reach-shelf = Alcanzar un estante alto con la mano vacía
    .until = Ponga en un lugar bajo lo que necesita.

activity-put-on-shelf = Poner algo en un estante alto
    .until = Use un escalón y las dos manos.

activity-sweep = Barrer el suelo con las dos manos
    .how = Muévase con los pies, no con los brazos.

activity-vacuum = Pasar la aspiradora con la mano operada
    .until = Hasta entonces, use la otra mano.

activity-push-door = Empujar una puerta pesada
    .until = Empuje con el otro lado o con la espalda.

activity-pull-door = Tirar de una puerta pesada
    .until = Hasta entonces, use la otra mano.

activity-chair-rise = Levantarse de una silla empujando con las dos manos
    .until = Vaya al borde y levántese con las piernas. Use solo la otra mano.

activity-lift-half-kilogram = Levantar medio kilo (1 lb)
    .how = Como una taza grande llena. Mantenga el codo cerca del cuerpo.

activity-lift-2-kg = Levantar 2 kg (4 lb) hasta una mesa
    .how = Mantenga la carga cerca del cuerpo.

activity-lift-5-kg = Levantar 5 kg (11 lb) hasta una mesa
    .how = Use las dos manos y mantenga cerca la carga.

activity-carry-bag = Llevar una bolsa de compra de 4 kg (9 lb)
    .until = Hasta entonces, use la otra mano o un carrito con ruedas.

activity-hold-child = Sostener a un niño pequeño en los dos brazos
    .how = Siéntese y deje que el niño suba a su regazo.

activity-walk-dog = Pasear un perro con el brazo operado
    .until = Un tirón de golpe puede dañar lo reparado. Use la otra mano.

activity-garden = Trabajar en el jardín
    .how = Empiece con trabajo corto y ligero, cerca del cuerpo.

activity-seat-belt = Alcanzar el cinturón del auto con la mano operada
    .until = Pase el cinturón con la otra mano.

activity-drive = Conducir un auto
    .until = Deje que conduzca otra persona.
    .how = Solo sin el cabestrillo y sin pastillas fuertes para el dolor. Debe poder frenar fuerte y girar rápido el volante. Pregunte a su seguro.

activity-manual-work = Volver al trabajo manual
    .how = Empiece con cargas ligeras por debajo del hombro.

activity-overhead-work = Trabajar por encima de la cabeza
    .until = Use un escalón para que el trabajo quede más bajo.

activity-run = Correr
    .how = Empiece en suelo llano. Una caída puede dañar lo reparado.

activity-cycle = Ir en bicicleta por la calle
    .how = Debe poder guiar y frenar con las dos manos.

activity-swim-breaststroke = Nadar a braza (estilo pecho)
    .how = Empiece con tramos cortos y lentos.

activity-swim = Nadar a crol (estilo libre)
    .how = Empiece con tramos cortos y lentos.

activity-sport-drills = Practicar los movimientos de su deporte
    .how = Sin rival y sin velocidad.

activity-sport = Hacer su deporte
    .how = Deporte por debajo del hombro y sin contacto.

activity-overhead-sport = Lanzar, sacar o rematar
    .how = Suba la velocidad a lo largo de semanas.

activity-contact-sport = Hacer deporte de contacto
    .how = Solo cuando su cirujano lo haya permitido.

activity-cycle-stationary = Pedalear en una bicicleta fija
    .how = Siéntese con la espalda recta. No se apoye en la mano operada. Antes, con el cabestrillo, solo si su cirujano está de acuerdo.
